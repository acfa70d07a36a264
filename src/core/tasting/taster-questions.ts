import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'

/** What every taster is asked of every serving: the responses that tasters answer, in the plan's order. */
export function tasterQuestions(plan: Pick<Plan, 'responses'>): Response[] {
  return plan.responses.filter((response) => response.by === 'taster')
}
