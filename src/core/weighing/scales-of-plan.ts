import type { KitchenThing, Scale } from '@/core/kitchen/kitchen-record.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The scales a plan is weighed on: those it names, else every scale of the kitchen. */
export function scalesOfPlan(
  plan: Pick<Plan, 'kitchenIds'>,
  kitchen: readonly KitchenThing[],
): Scale[] {
  const named = thingsOfKind(kitchen, 'scale', plan.kitchenIds)
  return named.length > 0 ? named : thingsOfKind(kitchen, 'scale')
}
