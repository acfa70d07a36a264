import { batchGrams } from '@/core/formula/batch-grams.ts'
import { hydrationPercent } from '@/core/formula/hydration.ts'
import { piecesAskedOfBatch } from '@/core/trial/pieces-in-batch.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/**
 * A value to start a new level from, in the factor's unit: one step past the last level; for the first level what the
 * plan has now. Rounded to six decimals, so that 64.2 + 0.1 gives 64.3.
 */
export function nextLevelValue(plan: Plan): number {
  const values = plan.levels.flatMap(({ value }) => (value === null ? [] : [value]))
  const last = values.at(-1)
  const before = values.at(-2)
  if (last === undefined) return presentValue(plan)
  const step = before === undefined || before === last ? usualStepOf(last) : last - before
  return round(last + step)
}

/** What the factor stands at in the plan as it is written: the ingredient's percent, the step's minutes, the piece's grams. */
export function presentValue(plan: Plan): number {
  const { factor, formula, steps } = plan
  const { acts } = factor
  if (acts.on === 'hydration') return round(hydrationPercent(formula) ?? 65)
  if ('ingredientId' in acts)
    return formula.ingredients.find((each) => each.id === acts.ingredientId)?.percent ?? 0
  if ('prefermentId' in acts)
    return formula.preferments.find((each) => each.id === acts.prefermentId)?.flourSharePercent ?? 0
  if (acts.on === 'piece-mass')
    return formula.batchSize.by === 'pieces'
      ? formula.batchSize.pieceGrams
      : Math.round(batchGrams(formula).doughGrams / Math.max(1, piecesAskedOfBatch(plan)) / 10) * 10
  if (!('stepId' in acts)) return 0
  const step = steps.find((each) => each.id === acts.stepId)
  if (!step) return 0
  if (acts.on === 'fold-count') return step.repeats
  if (acts.on === 'bake-temperature') return step.celsius ?? 230
  return round(step.waitSeconds / (acts.on === 'cold-hours' ? 3600 : 60))
}

function usualStepOf(value: number): number {
  const size = Math.abs(value)
  if (size >= 100) return 20
  if (size >= 20) return 3
  return size >= 3 ? 1 : 0.2
}

const round = (value: number) => Math.round(value * 1e6) / 1e6
