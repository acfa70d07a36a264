import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { followingQuestion } from './following-question.ts'

/**
 * Somebody else's trial as it is repeated in a kitchen of one's own: the same levels, formula, method, responses and what was
 * expected, so that the sessions pool; its scales, oven, flours and tasters give way to those of `own`. Flours are chosen anew: a bag
 * that stands elsewhere is no bag of this kitchen.
 *
 * @param own the things of the own kitchen; tasters are those that are in it, as far as the plan has seats
 */
export function repeatingPlan(plan: Plan, own: readonly KitchenThing[]): Plan {
  const tasters = own.filter((thing) => thing.kind === 'taster').slice(0, plan.tasters.length)
  const ingredients = plan.formula.ingredients.map(({ flourLotId: _, ...kept }) => kept)
  return {
    ...plan,
    question: followingQuestion('Repeat', plan),
    formula: { ...plan.formula, ingredients },
    tasters: tasters.map(({ id }) => ({ tasterId: id, knows: false })),
    kitchenIds: own.filter(({ kind }) => kind !== 'taster' && kind !== 'flour').map(({ id }) => id),
  }
}
