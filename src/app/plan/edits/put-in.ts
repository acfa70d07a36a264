import type { Plan } from '@/core/trial/plan-record.ts'

/** Every edit makes another object of a thing, so that what is still this one has not been touched. */
const things = new WeakSet<object>()

/** Marks what goes into a plan only because a kind of factor needs it, for as long as the page is open. */
export function asPutIn<Thing extends object>(thing: Thing): Thing {
  things.add(thing)
  return thing
}

/**
 * The plan without what a kind of factor put in, as far as nobody has changed it since, dosed it together or put it into a
 * preferment of their own.
 */
export function withoutPutIn(plan: Plan): Plan {
  const preferments = plan.formula.preferments.filter((each) => !things.has(each))
  const used = new Set([
    ...plan.sharedDoses.map(({ ingredientId }) => ingredientId),
    ...preferments.flatMap(({ parts }) => parts.map(({ ingredientId }) => ingredientId)),
  ])
  const ingredients = plan.formula.ingredients.filter(
    (each) => !things.has(each) || used.has(each.id),
  )
  const steps = plan.steps.filter((each) => !things.has(each))
  return { ...plan, formula: { ...plan.formula, ingredients, preferments }, steps }
}
