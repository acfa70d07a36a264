import type { Plan } from '@/core/trial/plan-record.ts'
import { type WrittenFirst, writtenFirst } from '@/core/trial/written-first.ts'

/** The plan with one thing of it written anew; what says nothing leaves no trace in the plan. */
export function withWrittenFirst(plan: Plan, next: Partial<WrittenFirst>): Plan {
  const now = { ...writtenFirst(plan), ...next }
  const says =
    now.hopedLevelId !== null || now.mostSessions !== null || now.looks || now.againstUsual
  return says ? { ...plan, writtenFirst: now } : withoutWrittenFirst(plan)
}

/** A plan without what was written first for another question. */
export function withoutWrittenFirst(plan: Plan): Plan {
  const { writtenFirst: _, ...rest } = plan
  return rest
}
