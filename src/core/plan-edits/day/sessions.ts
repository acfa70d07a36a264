import { most } from '@/core/record/most.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The plan made so many times; past the most, as it is. */
export function withSessions(plan: Plan, plannedSessions: number): Plan {
  return plannedSessions > most.plannedSessions ? plan : { ...plan, plannedSessions }
}
