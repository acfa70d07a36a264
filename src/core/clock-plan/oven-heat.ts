import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { stepAtLevel } from '@/core/trial/step-at-level.ts'

type Baked = Pick<Plan, 'steps' | 'factor' | 'levels'>

/**
 * How hot the oven is for a level, as a key to compare: the temperatures (°C) of its bakes in turn. Levels of different keys
 * cannot share a load, since an oven has one temperature at a time; pieces that bake longer or shorter can, each taken out in
 * its time.
 */
export function ovenHeat(plan: Baked, level: Level | null): string {
  return plan.steps
    .filter(({ kind }) => kind === 'bake')
    .map((step) => stepAtLevel(plan.factor, step, level)?.celsius ?? '')
    .join(' ')
}

/** True where the levels want the oven at different temperatures. */
export function heatsDiffer(plan: Baked): boolean {
  return new Set(plan.levels.map((level) => ovenHeat(plan, level))).size > 1
}
