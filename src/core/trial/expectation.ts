import * as z from 'zod/mini'
import { noteShape } from '@/core/record/text.ts'

/** What the baker expects of the main response as the factor rises, written down before the first mix. */
export const expectationShape = z.strictObject({
  direction: z.enum(['rises', 'falls', 'best-inside', 'no-difference']),
  /** The level the baker would bet on, in the factor's unit; null when there is no guess. */
  bestGuess: z.nullable(z.number()),
  why: z.exactOptional(noteShape),
})
export type Expectation = z.infer<typeof expectationShape>
