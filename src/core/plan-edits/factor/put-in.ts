import type { Ingredient } from '@/core/formula/formula-record.ts'
import {
  flourBeside,
  usualIngredient,
  usualPreferment,
} from '@/core/plan-edits/formula/usual-ingredient.ts'
import { usualStep } from '@/core/plan-edits/method/step-presets.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The plan with things named as put in for its factor's kind; without the part when there are none. */
export function namingPutIn(plan: Plan, ids: readonly string[]): Plan {
  const { putIn: _, ...bare } = plan
  return ids.length === 0 ? bare : { ...bare, putIn: [...ids] }
}

/** The plan with a thing no longer named as put in: it was taken out, or is the baker's own now. */
export function forgettingPutIn(plan: Plan, id: string): Plan {
  return plan.putIn?.includes(id)
    ? namingPutIn(
        plan,
        plan.putIn.filter((each) => each !== id),
      )
    : plan
}

/**
 * The plan without what its kind of factor put in. A thing goes only while it is still as it was put in, not dosed together
 * and in no preferment that stays; what stays is the baker's own from then on.
 */
export function withoutPutIn(plan: Plan): Plan {
  const put = new Set(plan.putIn)
  if (put.size === 0) return namingPutIn(plan, [])
  const { formula } = plan
  const goes = (thing: { id: string }, asPutIn: readonly object[]) =>
    put.has(thing.id) && asPutIn.some((each) => saysSame(each, thing))
  const preferments = formula.preferments.filter(
    (each) => !goes(each, [usualPreferment(formula.ingredients, each.id)]),
  )
  const used = new Set([
    ...plan.sharedDoses.map(({ ingredientId }) => ingredientId),
    ...preferments.flatMap(({ parts }) => parts.map(({ ingredientId }) => ingredientId)),
  ])
  const ingredients = formula.ingredients.filter(
    (each) => used.has(each.id) || !goes(each, ingredientsAsPutIn(each)),
  )
  const steps = plan.steps.filter((each) => !goes(each, [usualStep(each.kind, each.id)]))
  return namingPutIn({ ...plan, formula: { ...formula, ingredients, preferments }, steps }, [])
}

function ingredientsAsPutIn(ingredient: Ingredient): Ingredient[] {
  const { id, kind } = ingredient
  return [usualIngredient(kind, id), flourBeside([], id), flourBeside([ingredient], id)]
}

/** Compared whatever the order of their keys: a record that was read again has them in the order of its shape. */
function saysSame(one: object, other: object): boolean {
  const text = (thing: object) =>
    JSON.stringify(Object.entries(thing).toSorted(([a], [b]) => (a < b ? -1 : 1)))
  return text(one) === text(other)
}
