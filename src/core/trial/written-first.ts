import * as z from 'zod/mini'
import { countShape } from '@/core/record/count.ts'
import { idShape } from '@/core/record/id-and-stamp.ts'

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
export function writtenFirst(plan: { writtenFirst?: WrittenFirst }): WrittenFirst {
  return plan.writtenFirst ?? nothingWritten
}
