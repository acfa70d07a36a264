import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** How a taster is called at the table: their initials, or "erased" once they were taken out. */
export function initialsOf(whole: Pick<WholeTrial, 'kitchen'>, tasterId: string): string {
  const taster = whole.kitchen.find((thing) => thing.kind === 'taster' && thing.id === tasterId)
  return taster?.kind === 'taster' && taster.initials !== '' ? taster.initials : 'erased'
}
