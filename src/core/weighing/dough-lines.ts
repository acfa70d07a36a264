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
  /** How much of a gram weighed reaches the dough: less than 1 where a preferment leaves some in its jar. */
  reachesDough: number
}

/**
 * The lines of a batch's weigh sheet. A preferment is built for its own batch from its parts, then goes in whole; a ripe
 * starter is taken from a culture kept apart, so it is one weighing. What clings to a preferment's jar is made in addition,
 * shared over its parts, so that what comes out is what the formula asks. Ingredients of which the final dough takes nothing
 * are left out.
 */
export function doughLines(formula: Formula): DoughLine[] {
  const views = formulaViews(formula)
  const ahead = views.preferments.flatMap((one): DoughLine[] => {
    const { prefermentId, name, totalGrams } = one
    const whole = { prefermentId, ingredientId: null, name, kind: 'preferment' as const }
    if (one.kind === 'starter') {
      const key = `final/${prefermentId}`
      return [
        {
          ...whole,
          key,
          into: 'final-dough',
          what: 'starter',
          targetGrams: totalGrams,
          reachesDough: 1,
        },
      ]
    }
    const clings = formula.preferments.find(({ id }) => id === prefermentId)?.clingsGrams ?? 0
    const reachesDough = totalGrams > 0 ? totalGrams / (totalGrams + clings) : 1
    const parts = one.rows.map(({ ingredientId, name: part, kind, grams }): DoughLine => {
      const key = `${prefermentId}/${ingredientId}`
      const named = {
        ingredientId,
        prefermentId,
        name: part,
        kind,
        targetGrams: grams / reachesDough,
      }
      return { ...named, key, into: 'preferment', what: 'ingredient', reachesDough }
    })
    const key = `final/${prefermentId}`
    return [
      ...parts,
      {
        ...{ ...whole, key, into: 'final-dough', what: 'all-of-preferment' },
        ...{ targetGrams: totalGrams, reachesDough: 1 },
      },
    ]
  })
  const final = views.finalDough.rows
    .filter(({ grams }) => grams !== 0)
    .map(({ ingredientId, name, kind, grams }): DoughLine => {
      const named = {
        ingredientId,
        prefermentId: null,
        name,
        kind,
        targetGrams: grams,
        reachesDough: 1,
      }
      return { ...named, key: `final/${ingredientId}`, into: 'final-dough', what: 'ingredient' }
    })
  return [...ahead, ...final]
}
