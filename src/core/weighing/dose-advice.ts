import type { Ingredient } from '@/core/formula/formula-record.ts'
import type { Scale } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { BatchWeights } from './batch-weights.ts'
import { doseStages, dosesAsked } from './dose-asked.ts'
import type { DoughLine } from './dough-lines.ts'
import { type SharedDoseAnswer, sharedDose } from './shared-dose.ts'
import { coarsePastShare, type Weighing, weigh } from './weigh.ts'

export interface DoseAdvice {
  ingredientId: string
  name: string
  /** Relative standard uncertainty of the worst batch, weighed singly. */
  relativeUncertainty: number
  smallestGrams: number
  /** Some batch takes so little that the scale would show nothing. */
  belowScale: boolean
  dryMix: SharedDoseAnswer
  /** The stock; of several stages the one that cannot be made, or is least certain. */
  stock: SharedDoseAnswer
  /** The stock of each stage. */
  stocks: SharedDoseAnswer[]
  /** Instant yeast, salt and other dry things mix dry; the rest goes into water. */
  better: 'dry-mix' | 'stock'
  /** Where the better stays too coarse or cannot be made: the coarsest step, in g, of one more scale that would do; null if none. */
  mendingStepGrams: number | null
}

/** Steps that scales are sold with, in g, and how many of them such a scale holds (common practice, no source). */
const usualSteps = [2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001] as const
const usualStepsHeld = 20_000

/**
 * Ingredients whose single weights are more than 5 % uncertain in some batch and that the plan does not share yet, each
 * with a dry mix and a stock in amounts that the given scales weigh. Flour and water are never advised on.
 */
export function doseAdvice(
  plan: Plan,
  doughs: readonly { key: string; lines: readonly DoughLine[] }[],
  batches: readonly BatchWeights[],
  scales: readonly Scale[],
): DoseAdvice[] {
  const shared = new Set(plan.sharedDoses.map(({ ingredientId }) => ingredientId))
  return plan.formula.ingredients.flatMap((ingredient): DoseAdvice[] => {
    const { id: ingredientId, name, kind } = ingredient
    if (shared.has(ingredientId) || kind === 'flour' || kind === 'water') return []
    const lines = batches
      .flatMap((batch) => batch.lines)
      .filter((line) => line.ingredientId === ingredientId && line.targetGrams > 0)
    const relativeUncertainty = Math.max(0, ...lines.map((line) => line.relativeUncertainty ?? 0))
    if (relativeUncertainty <= coarsePastShare) return []
    const answers = (by: 'dry-mix' | 'stock', on = scales) =>
      doseStages(doughs, ingredientId, by).map((stage) => {
        const { carrierId, asked } = dosesAsked(doughs, ingredientId, by, stage)
        return sharedDose({ ingredientId, by }, carrierId, asked, on, stage)
      })
    const answer = (by: 'dry-mix' | 'stock', on = scales) => worstOf(answers(by, on))
    const smallestGrams = Math.min(...lines.map(({ targetGrams }) => targetGrams))
    const belowScale = lines.some(({ trouble }) => trouble === 'below-scale')
    const stocks = answers('stock')
    const [dryMix, stock] = [answer('dry-mix'), worstOf(stocks)]
    const better = mixesDry(ingredient) && dryMix.ok ? 'dry-mix' : 'stock'
    const mends = (step: number) => {
      const on = [...scales, usualScale(step)]
      const singly = lines.every(({ targetGrams }) => isFine(weigh(targetGrams, on)))
      return (
        singly ||
        (mixesDry(ingredient) && isFine(answer('dry-mix', on))) ||
        isFine(answer('stock', on))
      )
    }
    const made = better === 'stock' ? stock : dryMix
    const mendingStepGrams = isFine(made) ? null : (usualSteps.find(mends) ?? null)
    const weighed = { relativeUncertainty, smallestGrams, belowScale }
    return [{ ingredientId, name, ...weighed, dryMix, stock, stocks, better, mendingStepGrams }]
  })
}

function usualScale(resolutionGrams: number): Scale {
  const capacityGrams = resolutionGrams * usualStepsHeld
  return { id: 'usual', kind: 'scale', name: '', resolutionGrams, capacityGrams }
}

function worstOf(answers: readonly SharedDoseAnswer[]): SharedDoseAnswer {
  const uncertainty = (one: SharedDoseAnswer) =>
    one.ok ? one.relativeUncertainty : Number.POSITIVE_INFINITY
  return answers.reduce((a, b) => (uncertainty(b) > uncertainty(a) ? b : a))
}

function isFine(one: Weighing | SharedDoseAnswer): boolean {
  if ('ok' in one && !one.ok) return false
  return (one.relativeUncertainty ?? 0) <= coarsePastShare
}

function mixesDry({ kind, yeastForm, waterPercent }: Ingredient): boolean {
  if (kind === 'yeast') return yeastForm === 'instant'
  return kind === 'salt' || (kind === 'other' && (waterPercent ?? 0) === 0)
}
