import * as z from 'zod/mini'
import { wholeShape } from '@/core/record/count.ts'
import { idShape } from '@/core/record/id.ts'
import { listOf } from '@/core/record/list.ts'
import { most } from '@/core/record/most.ts'
import { atShape } from '@/core/record/stamp.ts'
import { answerShape } from '@/core/seal/blind/answer.ts'

/** One taster's answers for one serving (or one tell-apart set). Append-only: a changed ballot replaces the one it names. */
export const ballotShape = z.strictObject({
  id: idShape,
  trialId: idShape,
  sessionId: idShape,
  tasterId: idShape,
  device: idShape,
  count: wholeShape,
  at: atShape,
  startedAt: atShape,
  about: z.strictObject({ kind: z.enum(['serving', 'set']), id: idShape }),
  answers: listOf(answerShape, { most: most.responses }),
  /** For a set: the code the taster picked. */
  pickedCode: z.exactOptional(z.string().check(z.regex(/^[1-9][0-9]{2}$/))),
  replaces: z.exactOptional(idShape),
})

export type Ballot = z.infer<typeof ballotShape>
