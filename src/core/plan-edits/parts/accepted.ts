import type { Plan } from '@/core/trial/plan-record.ts'

/** The plan with a difference that the baker knows of and goes on with. */
export function accepting(plan: Plan, key: string): Plan {
  return { ...plan, accepted: [...new Set([...plan.accepted, key])] }
}
