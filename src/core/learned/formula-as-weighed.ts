import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import { overallFromParts } from '@/core/formula/overall-from-parts.ts'
import type { WeighedIn } from '@/core/session/weights-of-batch.ts'
import type { BatchWeights } from '@/core/weighing/batch-weights.ts'

/**
 * The formula that the weights of a dough make: each logged line moves its ingredient by what it is off its target, a ripe
 * starter moves all that is in it. Lines that were not logged, and doses from a shared mix or stock, stand at their target.
 * Of what a preferment was made with, what clings to its jar never reaches the dough.
 * Preferments keep their temperatures. Null when no flour is left.
 */
export function formulaAsWeighed(
  { formula, lines }: Pick<BatchWeights, 'formula' | 'lines'>,
  logged: readonly WeighedIn[],
): Formula | null {
  const views = formulaViews(formula)
  const offBy = (prefermentId: string | null, ingredientId: string): number => {
    const line = lines.find(
      (one) =>
        one.what === 'ingredient' &&
        one.prefermentId === prefermentId &&
        one.ingredientId === ingredientId,
    )
    const weight = logged.find(
      (one) => one.prefermentId === prefermentId && one.ingredientId === ingredientId,
    )
    return line && weight ? (weight.grams - line.targetGrams) * line.reachesDough : 0
  }
  const starterShare = (prefermentId: string): number => {
    const line = lines.find((one) => one.what === 'starter' && one.prefermentId === prefermentId)
    const weight = logged.find((one) => one.ingredientId === prefermentId)
    return line && weight && line.targetGrams > 0 ? weight.grams / line.targetGrams : 1
  }
  const made = overallFromParts({
    ingredients: formula.ingredients.map(({ percent: _, ...one }) => one),
    finalDough: views.finalDough.rows.map(({ ingredientId, grams }) => ({
      ingredientId,
      grams: grams + offBy(null, ingredientId),
    })),
    preferments: views.preferments.map((one) => ({
      ...{ id: one.prefermentId, name: one.name, kind: one.kind },
      parts: one.rows.map(({ ingredientId, grams }) => ({
        ingredientId,
        grams: grams * starterShare(one.prefermentId) + offBy(one.prefermentId, ingredientId),
      })),
    })),
  })
  if (!made.ok) return null
  const preferments = made.formula.preferments.map((one) => {
    const celsius = formula.preferments.find(({ id }) => id === one.id)?.celsius
    return celsius === undefined ? one : { ...one, celsius }
  })
  return { ...made.formula, preferments }
}
