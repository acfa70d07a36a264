import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { namingPutIn } from '@/core/plan-edits/factor/put-in.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { undatedPlan } from '@/core/trial/undated-plan.ts'
import { withoutWrittenFirst } from './with-written-first.ts'

/**
 * A plan made anew from another trial's: its question, factor, levels, formula, method, responses and all, in place of
 * this one's. What one expects is written anew; tasters, kitchen things and bags that this notebook has not are left out.
 */
export function planFromOther(plan: Plan, other: Plan, kitchen: readonly KitchenThing[]): Plan {
  const here = new Set(kitchen.map(({ id }) => id))
  const { id, trialId, revision, at, zone } = plan
  return {
    ...withoutWrittenFirst(undatedPlan(other)),
    ...{ id, trialId, revision, at, zone },
    expectation: null,
    tasters: other.tasters.filter(({ tasterId }) => here.has(tasterId)),
    kitchenIds: other.kitchenIds.filter((thing) => here.has(thing)),
    formula: {
      ...other.formula,
      ingredients: other.formula.ingredients.map(({ flourLotId, ...ingredient }) =>
        flourLotId !== undefined && here.has(flourLotId)
          ? { ...ingredient, flourLotId }
          : ingredient,
      ),
    },
    accepted: [],
  }
}

/** A page with as little on it as a plan can have: flour, water and what the factor moves, no level, no other step, no response. */
export function emptyPlan(plan: Plan): Plan {
  const { ingredients, preferments } = plan.formula
  const moved = new Set<string>(Object.values(plan.factor.acts))
  const ahead = preferments.filter(({ id }) => moved.has(id))
  const parts = ahead.flatMap((each) => each.parts.map(({ ingredientId }) => ingredientId))
  const needed = new Set([...moved, ...parts])
  const least = ingredients.filter(
    ({ id, kind }, at) =>
      needed.has(id) ||
      ((kind === 'flour' || kind === 'water') &&
        ingredients.findIndex((each) => each.kind === kind) === at),
  )
  return {
    ...withoutWrittenFirst(namingPutIn(plan, [])),
    expectation: null,
    levels: [],
    formula: { ...plan.formula, ingredients: least, preferments: ahead },
    steps: plan.steps.filter(({ id }) => moved.has(id)),
    responses: [],
    mainResponseId: null,
    sharedDoses: [],
    tellApart: null,
    accepted: [],
  }
}
