import type { Plan } from '@/core/trial/plan-record.ts'
import { plainNumber } from '@/core/units/number-text.ts'

/**
 * What stands in place of an ingredient's percent when the factor sets it: the span of the levels for the one it moves,
 * "the rest" for the flour a share is taken from; null when the percent is the baker's to type.
 */
export function movedBy({ factor, levels }: Plan, ingredientId: string): string | null {
  const { acts } = factor
  if ('fromIngredientId' in acts && acts.fromIngredientId === ingredientId) return 'the rest'
  if (!('ingredientId' in acts) || acts.ingredientId !== ingredientId) return null
  const values = levels.flatMap(({ value }) => (value === null ? [] : [value]))
  if (values.length === 0) return 'by the levels'
  const least = plainNumber(Math.min(...values))
  const most = plainNumber(Math.max(...values))
  const span = least === most ? least : `${least} to ${most}`
  return acts.on === 'hydration' ? `for ${span} % hydration` : `${span} % by level`
}
