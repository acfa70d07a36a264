import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'

/** A taster's initials; one that was erased or is not in the file is said so, and stays one and the same by number. */
export function tasterName(tasterId: string, kitchen: readonly KitchenThing[]): string {
  const tasters = kitchen.filter((thing) => thing.kind === 'taster')
  const index = tasters.findIndex((thing) => thing.id === tasterId)
  const initials = tasters[index]?.initials.trim() ?? ''
  if (initials !== '') return initials
  return index < 0 ? 'a taster' : `taster ${index + 1}`
}
