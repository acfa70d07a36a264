import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { type OvenTimes, ovenTimes } from '@/core/kitchen/oven-times.ts'
import { saysSame } from '@/core/record/says-same.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The plan with the times of its ovens as the kitchen says them now; what the kitchen does not say is as usual. */
export function withOvenTimes(plan: Plan, kitchen: readonly KitchenThing[]): Plan {
  const { recoverySeconds: _, oven: __, ...others } = plan.day ?? {}
  const day = { ...others, ...ovenTimes(kitchen, plan.kitchenIds) }
  if (Object.keys(day).length > 0) return { ...plan, day }
  const { day: ___, ...bare } = plan
  return bare
}

/** Whether a plan has the times that the kitchen says of some ovens, named by `ids`. */
export function hasOvenTimes(
  { day }: Plan,
  kitchen: readonly KitchenThing[],
  ids: readonly string[],
): boolean {
  const { recoverySeconds, oven } = day ?? {}
  const own: OvenTimes = {
    ...(recoverySeconds === undefined ? {} : { recoverySeconds }),
    ...(oven === undefined ? {} : { oven }),
  }
  return saysSame(own, ovenTimes(kitchen, ids))
}
