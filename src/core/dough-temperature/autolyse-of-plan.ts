import type { Plan } from '@/core/trial/plan-record.ts'

/** The rest after the first wetting, ahead of the mix: the seconds all autolyses wait; 0 where the water goes in at the mix. */
export function autolyseSeconds({ steps }: Pick<Plan, 'steps'>): number {
  return ahead(steps).reduce((sum, { repeats, waitSeconds }) => sum + repeats * waitSeconds, 0)
}

/** Whether the water goes in at an autolyse. */
export function hasAutolyse({ steps }: Pick<Plan, 'steps'>): boolean {
  return ahead(steps).length > 0
}

function ahead(steps: Plan['steps']): Plan['steps'] {
  const mix = steps.findIndex(({ kind }) => kind === 'mix')
  return steps.slice(0, mix < 0 ? steps.length : mix).filter(({ kind }) => kind === 'autolyse')
}
