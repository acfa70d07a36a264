import * as z from 'zod/mini'
import { idShape } from '@/core/record/id-and-stamp.ts'
import { answeredShape } from '@/core/record/quantity.ts'
import { noteShape } from '@/core/record/text.ts'

/** One answer; without a value it says why (an allergy, a piece that ran out): never a silent gap. */
export const answerShape = z.strictObject({
  responseId: idShape,
  value: z.nullable(answeredShape),
  why: z.exactOptional(noteShape),
})
export type Answer = z.infer<typeof answerShape>
