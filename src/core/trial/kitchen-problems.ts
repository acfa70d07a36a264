import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import { coldPlaces } from './cold-places.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

/** A load with more pieces than the chosen ovens hold together. */
export function loadProblems(
  { placesPerLoad, kitchenIds }: Plan,
  kitchen: readonly KitchenThing[],
): PlanProblem[] {
  const ovens = thingsOfKind(kitchen, 'oven', kitchenIds)
  const holds = ovens.reduce((sum, { places }) => sum + places, 0)
  if (ovens.length === 0 || placesPerLoad <= holds) return []
  const names = ovens.map(({ name }) => name)
  const fewer = { reason: 'oven-holds-fewer' as const, names, holds, asked: placesPerLoad }
  return [{ path: '/placesPerLoad', severity: 'ask', ...fewer }]
}

/** What a plan uses of the kitchen: things that are gone, no scale, fridges that hold less than proves cold at once. */
export function kitchenProblems(plan: Plan, kitchen: readonly KitchenThing[]): PlanProblem[] {
  const known = new Set(kitchen.map(({ id }) => id))
  const gone = plan.kitchenIds.flatMap((id, index): PlanProblem[] =>
    known.has(id)
      ? []
      : [{ path: `/kitchenIds/${index}`, severity: 'ask', reason: 'kitchen-thing-missing', id }],
  )
  const found = [...gone, ...fridgeProblems(plan, kitchen)]
  // A plan that names no scale is weighed on all there are.
  if (thingsOfKind(kitchen, 'scale').length > 0) return found
  return [...found, { path: '/kitchenIds', severity: 'ask', reason: 'no-scale' }]
}

/** Said at the last of the chosen fridges; one whose room nobody told may hold anything. */
function fridgeProblems(plan: Plan, kitchen: readonly KitchenThing[]): PlanProblem[] {
  const fridges = thingsOfKind(kitchen, 'fridge', plan.kitchenIds)
  const holds = fridges.reduce((sum, { places }) => sum + (places ?? Number.POSITIVE_INFINITY), 0)
  const asked = coldPlaces(plan)
  if (fridges.length === 0 || asked <= holds) return []
  const at = Math.max(...fridges.map(({ id }) => plan.kitchenIds.indexOf(id)))
  const fewer = { reason: 'fridge-holds-fewer' as const, names: fridges.map(({ name }) => name) }
  return [{ path: `/kitchenIds/${at}`, severity: 'ask', ...fewer, holds, asked }]
}
