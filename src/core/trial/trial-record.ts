import * as z from 'zod/mini'
import { wholeShape } from '@/core/record/count.ts'
import { atShape, idShape, zoneShape } from '@/core/record/id-and-stamp.ts'
import { noteShape } from '@/core/record/text.ts'

/** How a trial continues another: its winner confirmed, its range narrowed, or simply made again. */
export const followsShape = z.strictObject({
  trialId: idShape,
  how: z.enum(['confirms', 'narrows', 'repeats', 'copies']),
})

/** One question about one factor. What is asked and how stands in its plan; this record only ties the rest together. */
export const trialShape = z.strictObject({
  id: idShape,
  createdAt: atShape,
  zone: zoneShape,
  /** The plan revision in force. */
  planId: idShape,
  /** Where every draw of the trial starts from; kept and printed. */
  seed: z.number().check(z.int(), z.gte(0), z.lte(0xffffffff)),
  /** Goes up by one with every change to anything of the trial; summaries are keyed by it. */
  revision: wholeShape,
  note: noteShape,
  follows: z.exactOptional(followsShape),
  archivedAt: z.exactOptional(atShape),
  binnedAt: z.exactOptional(atShape),
})

export type Follows = z.infer<typeof followsShape>
export type Trial = z.infer<typeof trialShape>
