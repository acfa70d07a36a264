import type { Plan } from '@/core/trial/plan-record.ts'

/** Something taken out of a plan: the plan without it, and how to put it back into the plan as it stands by then. */
export interface TakenOut {
  id: string
  /** What it was called. */
  what: string
  plan: Plan
  restore: (plan: Plan) => Plan
}
