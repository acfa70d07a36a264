import { batchGrams } from '@/core/formula/batch-grams.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import type { ActsOn } from './factor.ts'
import { formulaAtLevel } from './formula-at-level.ts'
import { levelShare, workedInShare } from './level-ratio.ts'
import type { Plan } from './plan-record.ts'

const benchGrams = [5, 10] as const

export interface BenchShift {
  levelId: string
  value: number
  /** The dough the grams go into: one piece, or the whole batch when it is sized by flour. */
  intoGrams: number
  into: 'piece' | 'batch'
  /** The level once so many grams of bench flour, or water from wet hands, are worked in. */
  flour: { grams: number; level: number }[]
  water: { grams: number; level: number }[]
}

/**
 * What 5 g and 10 g of bench flour or of hand water do to each level: 5 g of flour worked into a 250 g ball of flour and
 * water takes 70 % hydration to 67.7 %. Empty for factors that are no percentage.
 */
export function benchShift(plan: Pick<Plan, 'formula' | 'factor' | 'levels'>): BenchShift[] {
  const { acts } = plan.factor
  return plan.levels.flatMap((level) => {
    const at = formulaAtLevel(plan, level)
    if (!at.ok || level.value === null) return []
    const sums = levelSums(at.formula, acts)
    if (!sums) return []
    const { doughGrams, pieceGrams } = batchGrams(at.formula)
    const intoGrams = pieceGrams ?? doughGrams
    if (!(doughGrams > 0 && intoGrams > 0)) return []
    const share = intoGrams / doughGrams
    const shifted = (what: 'dusting-flour' | 'hand-water') =>
      benchGrams.map((grams) => {
        const per = workedInShare(at.formula, acts, what) ?? { above: 0, below: 0 }
        const above = sums.above * share + per.above * grams
        return { grams, level: (above / (sums.below * share + per.below * grams)) * 100 }
      })
    const into = pieceGrams === null ? ('batch' as const) : ('piece' as const)
    const flour = shifted('dusting-flour')
    return [
      {
        levelId: level.id,
        value: level.value,
        intoGrams,
        into,
        flour,
        water: shifted('hand-water'),
      },
    ]
  })
}

/** Sums above and below the line of the level over the overall view, in grams; null without flour or percentage. */
function levelSums(formula: Formula, acts: ActsOn): { above: number; below: number } | null {
  const views = formulaViews(formula)
  const parts = [
    ...views.preferments.flatMap(({ prefermentId, rows }) =>
      rows.map((row) => ({ ...row, prefermentId })),
    ),
    ...views.finalDough.rows.map((row) => ({ ...row, prefermentId: null })),
  ]
  const sums = { above: 0, below: 0 }
  for (const { grams, ingredientId, prefermentId } of parts) {
    const share = levelShare(formula, acts, { ingredientId, prefermentId })
    if (!share) return null
    sums.above += share.above * grams
    sums.below += share.below * grams
  }
  return sums.below > 0 ? sums : null
}
