import type { TakenOut } from '@/core/plan-edits/take-out/take-out.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { usePlanStore } from './plan-page-context.ts'

/** Removes a thing from the plan and offers to put it back; what may not go stays. */
export function useTakeOut(): (take: (plan: Plan) => TakenOut | null) => void {
  const store = usePlanStore()
  return (take) => {
    const taken = take(store.getState().plan)
    if (taken) store.getState().takeOut(taken)
  }
}
