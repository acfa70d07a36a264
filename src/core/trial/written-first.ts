import * as z from 'zod/mini'
import { countShape } from '@/core/record/count.ts'
import { idShape } from '@/core/record/id.ts'
import type { Plan } from './plan-record.ts'

/** What is written down before the first mix beside the expectation, since it decides how clear an answer must be; locked with it. */
export const writtenFirstShape = z.strictObject({
  /** The level the baker hopes will do as well as the best: named first, it needs less to be shown. */
  hopedLevelId: z.nullable(idShape),
  /** The most sessions there will ever be, when more than planned may follow; null when none will. */
  mostSessions: z.nullable(countShape),
  /** Findings are looked at after each session from the second on; then they have to be clearer. */
  looks: z.boolean(),
  /** Every level is compared with the usual alone, instead of all pairs. */
  againstUsual: z.boolean(),
})
export type WrittenFirst = z.infer<typeof writtenFirstShape>

const nothingWritten: WrittenFirst = {
  hopedLevelId: null,
  mostSessions: null,
  looks: false,
  againstUsual: false,
}

/** What a plan wrote down first; nothing where it says nothing. */
export function writtenFirst({ writtenFirst: written }: Pick<Plan, 'writtenFirst'>): WrittenFirst {
  return written ?? nothingWritten
}

/** The plan with one thing of it written anew; what says nothing leaves no trace in the plan. */
export function withWrittenFirst(plan: Plan, next: Partial<WrittenFirst>): Plan {
  const { writtenFirst: before = nothingWritten, ...rest } = plan
  const now = { ...before, ...next }
  const says =
    now.hopedLevelId !== null || now.mostSessions !== null || now.looks || now.againstUsual
  return says ? { ...rest, writtenFirst: now } : rest
}

/** A plan without what was written first for another question. */
export function withoutWrittenFirst(plan: Plan): Plan {
  const { writtenFirst: _, ...rest } = plan
  return rest
}
