import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { stepAtLevel } from '@/core/trial/step-at-level.ts'

type Timed = Pick<Plan, 'steps' | 'factor' | 'levels'>

/** Seconds from the first step to the oven at one level, hands and waits, as the method says; without a bake, all of it. */
export function wayToOvenSeconds(plan: Timed, level: Level | null): number {
  const bake = plan.steps.findIndex(({ kind }) => kind === 'bake')
  return secondsOfSteps(plan, level, bake < 0 ? plan.steps : plan.steps.slice(0, bake))
}

/** Seconds that some steps take at one level, one after another. */
export function secondsOfSteps(plan: Timed, level: Level | null, steps: Plan['steps']): number {
  return steps.reduce((sum, step) => {
    const own = stepAtLevel(plan.factor, step, level)
    return sum + (own ? (own.handsSeconds + own.waitSeconds) * own.repeats : 0)
  }, 0)
}

/** True where the levels take differently long to the oven: a time is the factor, or a step is done at some levels only. */
export function waysDiffer(plan: Timed): boolean {
  return new Set(plan.levels.map((level) => wayToOvenSeconds(plan, level))).size > 1
}
