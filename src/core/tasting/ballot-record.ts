import * as z from 'zod/mini'
import { countTo, listOf, wholeShape } from '@/core/record/count.ts'
import { atShape, idShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { nameShape, noteShape } from '@/core/record/text.ts'
import { answerShape } from '@/core/seal/blind/answer.ts'
import { servingCodeShape } from '@/core/session/serving-code.ts'

/** How a ballot came in where it was not scored on this device. */
const cameByShape = z.discriminatedUnion('way', [
  /** Typed from paper: by whom, and by whom typed a second time, where it was. */
  z.strictObject({
    way: z.literal('paper'),
    typedBy: nameShape,
    typedAgainBy: z.exactOptional(nameShape),
  }),
  /** By a slip from a taster's own phone; what looked odd about it is said. */
  z.strictObject({
    way: z.literal('slip'),
    /** Which phone it was, drawn in 32 bits, and the number of its word, counted up: the same return is taken once. */
    nonce: z.number().check(z.int(), z.gte(0), z.lte(0xffffffff)),
    revision: wholeShape,
    odd: z.exactOptional(noteShape),
  }),
])

const rankedShape = z
  .array(z.array(servingCodeShape).check(z.minLength(1), z.maxLength(most.piecesOfSession)))
  .check(z.minLength(1), z.maxLength(most.piecesOfSession))

/** One taster's answers for one serving (or one tell-apart set). Append-only: a changed ballot replaces the one it names. */
export const ballotShape = z.strictObject({
  id: idShape,
  trialId: idShape,
  sessionId: idShape,
  tasterId: idShape,
  device: idShape,
  count: wholeShape,
  at: atShape,
  /** When the taster first had the code; left out where nobody knows, as of a ballot on paper. */
  startedAt: z.exactOptional(atShape),
  /** At which place among their servings it came, from 1, as their own phone says; left out where the order in force tells it. */
  position: z.exactOptional(countTo(most.piecesOfSession)),
  about: z.strictObject({ kind: z.enum(['serving', 'set', 'session', 'ranking']), id: idShape }),
  answers: listOf(answerShape, { most: most.responses }),
  /** For a set the code the taster picked; about a session that which they guessed, left out for “no idea”. */
  pickedCode: z.exactOptional(servingCodeShape),
  /** What the guess about a session is of, where it is not the usual one: that which has most of the factor. */
  guessOf: z.exactOptional(z.literal('most')),
  /** Of a ranking (about the session): the codes by their place, first to last; those of one place stand together. */
  ranked: z.exactOptional(rankedShape),
  /** In the taster's own words. */
  words: z.exactOptional(noteShape),
  replaces: z.exactOptional(idShape),
  /** Why it replaces another and who says so; a ballot that voids the other counts for nothing itself. */
  change: z.exactOptional(
    z.strictObject({ by: nameShape, because: noteShape, voids: z.exactOptional(z.boolean()) }),
  ),
  cameBy: z.exactOptional(cameByShape),
  /** Came in after the tasting was over: kept, shown apart, in no finding. */
  late: z.exactOptional(z.boolean()),
})

export type Ballot = z.infer<typeof ballotShape>
