import type { Plan } from '@/core/trial/plan-record.ts'

/** The most sessions a plan can have. */
export const mostSessions = 50

/** The plan made so many times; past the most, as it is. */
export function withSessions(plan: Plan, plannedSessions: number): Plan {
  return plannedSessions > mostSessions ? plan : { ...plan, plannedSessions }
}
