import * as z from 'zod/mini'
import { wholeShape } from '@/core/record/count.ts'
import { atShape, idShape } from '@/core/record/id-and-stamp.ts'
import { followsShape } from '@/core/trial/trial-record.ts'

/** A line of the home list: rebuilt from the trial whenever its revision has moved on. */
export const summaryShape = z.strictObject({
  trialId: idShape,
  revision: wholeShape,
  question: z.string(),
  factorName: z.string(),
  unitOfMeasure: z.string(),
  levels: z.array(z.strictObject({ label: z.string(), value: z.nullable(z.number()) })),
  stage: z.enum(['planning', 'working', 'tasting', 'sealed', 'between', 'answered']),
  /** While a session's codes are kept: then nothing of it may name a level. */
  sealed: z.boolean(),
  /** The answer in words, as it was found at this very revision; nothing else ever stands here. */
  answer: z.exactOptional(z.string().check(z.minLength(1), z.maxLength(2000))),
  sessionsDone: wholeShape,
  plannedSessions: wholeShape,
  /** What the factor moves, by its kind. Missing, like the three below, in a line that was stored before lines had it. */
  factorKind: z.exactOptional(z.string()),
  /** Flours by their names and bags, and all notes in one text, for the search; nothing of either while it is sealed. */
  flours: z.exactOptional(z.array(z.string())),
  notes: z.exactOptional(z.string()),
  /** The trial that this one carries on. */
  follows: z.exactOptional(followsShape),
  lastAt: atShape,
  createdAt: atShape,
  archived: z.boolean(),
  binned: z.boolean(),
})
export type Summary = z.infer<typeof summaryShape>
