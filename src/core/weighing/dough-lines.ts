import type { Formula, Ingredient } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'

/** One thing to weigh for one batch, before any scale: an ingredient into a preferment or the final dough, or a starter. */
export interface DoughLine {
  /** The same for the same line of every batch. */
  key: string
  into: 'preferment' | 'final-dough'
  /** `all-of-preferment` is not weighed: everything that was built ahead goes in. */
  what: 'ingredient' | 'starter' | 'all-of-preferment'
  ingredientId: string | null
  prefermentId: string | null
  name: string
  kind: Ingredient['kind'] | 'preferment'
  targetGrams: number
}

/**
 * The lines of a batch's weigh sheet. A preferment is built for its own batch from its parts, then goes in whole; a ripe
 * starter is taken from a culture kept apart, so it is one weighing. Ingredients of which the final dough takes nothing
 * are left out.
 */
export function doughLines(formula: Formula): DoughLine[] {
  const views = formulaViews(formula)
  const ahead = views.preferments.flatMap((one): DoughLine[] => {
    const { prefermentId, name, totalGrams } = one
    const whole = { prefermentId, ingredientId: null, name, kind: 'preferment' as const }
    if (one.kind === 'starter') {
      const key = `final/${prefermentId}`
      return [{ ...whole, key, into: 'final-dough', what: 'starter', targetGrams: totalGrams }]
    }
    const parts = one.rows.map(({ ingredientId, name: part, kind, grams }): DoughLine => {
      const key = `${prefermentId}/${ingredientId}`
      const named = { ingredientId, prefermentId, name: part, kind, targetGrams: grams }
      return { ...named, key, into: 'preferment', what: 'ingredient' }
    })
    const key = `final/${prefermentId}`
    return [
      ...parts,
      { ...whole, key, into: 'final-dough', what: 'all-of-preferment', targetGrams: totalGrams },
    ]
  })
  const final = views.finalDough.rows
    .filter(({ grams }) => grams !== 0)
    .map(({ ingredientId, name, kind, grams }): DoughLine => {
      const named = { ingredientId, prefermentId: null, name, kind, targetGrams: grams }
      return { ...named, key: `final/${ingredientId}`, into: 'final-dough', what: 'ingredient' }
    })
  return [...ahead, ...final]
}
