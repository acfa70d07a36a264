import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import { most } from '@/core/record/most.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { hasOvenTimes, withOvenTimes } from './oven-times-of-plan.ts'

/** Pieces in the oven at once of a plan that no oven is chosen for, as a new plan starts; and the most that can be entered. */
const places = { atStart: 1, most: most.placesPerLoad }

/**
 * The plan with one of the kitchen's things chosen, or no longer. An oven brings the number of its pieces and its own times
 * along, as long as the plan's are still what the start or the ovens chosen before gave it; the pieces of several ovens add up,
 * and the slowest gives the times.
 */
export function withThingChosen(plan: Plan, kitchen: readonly KitchenThing[], id: string): Plan {
  const kitchenIds = plan.kitchenIds.includes(id)
    ? plan.kitchenIds.filter((each) => each !== id)
    : [...plan.kitchenIds, id]
  const given = placesGiven(kitchen, plan.kitchenIds)
  const untouched = plan.placesPerLoad === given
  const chosen = {
    ...plan,
    kitchenIds,
    placesPerLoad: untouched ? placesGiven(kitchen, kitchenIds) : plan.placesPerLoad,
  }
  return hasOvenTimes(plan, kitchen, plan.kitchenIds) ? withOvenTimes(chosen, kitchen) : chosen
}

function placesGiven(kitchen: readonly KitchenThing[], ids: readonly string[]): number {
  const ovens = thingsOfKind(kitchen, 'oven', ids)
  if (ovens.length === 0) return places.atStart
  return Math.min(
    places.most,
    ovens.reduce((sum, oven) => sum + oven.places, 0),
  )
}
