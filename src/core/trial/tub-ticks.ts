import type { Plan } from './plan-record.ts'
import { stepAtLevel } from './step-at-level.ts'

/** One thing done to a dough in its tub, to be ticked on its label: a step, or one turn of it where it has several. */
export interface TubTick {
  key: string
  name: string
  /** Which turn of how many; null where the step is done once. */
  turn: number | null
}

const beforeTheTub = ['feed']
const afterTheTub = ['bake', 'cool', 'cut', 'serve']

/**
 * What is done to a dough from the mix to the oven, in order: the same for every tub. A step that some levels have otherwise,
 * or not at all, stands as one box for all, so that a label never says which level it is on.
 */
export function tubTicks({ steps, factor, levels }: Pick<Plan, 'steps' | 'factor' | 'levels'>) {
  const first = steps.findIndex(({ kind }) => afterTheTub.includes(kind))
  const inTub = first === -1 ? steps : steps.slice(0, first)
  return inTub
    .filter(({ kind }) => !beforeTheTub.includes(kind))
    .flatMap((step): TubTick[] => {
      const same = levels.every(
        (level) => stepAtLevel(factor, step, level)?.repeats === step.repeats,
      )
      if (!same || step.repeats === 1) return [{ key: step.id, name: step.name, turn: null }]
      return Array.from({ length: step.repeats }, (_, at) => ({
        ...{ key: `${step.id} ${at + 1}`, name: step.name, turn: at + 1 },
      }))
    })
}
