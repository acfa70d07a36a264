import * as z from 'zod/mini'
import { idShape } from '@/core/record/id-and-stamp.ts'
import { nameShape, noteShape } from '@/core/record/text.ts'

/** Measures the notebook works out itself from what the bench logs (masses, sizes, stamps). `own` is typed in. */
export const measures = [
  'own',
  'bake-loss',
  'bake-time',
  'rise',
  'oven-spring',
  'specific-volume',
  'dough-temperature',
  'core-temperature',
] as const

/** How an answer is given: an anchored nine-point scale, a five-point just-about-right scale, or a measured number. */
const answerScaleShape = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('nine-point'),
    /** Words beside points of the scale, at least beside 1 and 9. */
    anchors: z
      .array(
        z.strictObject({
          at: z.number().check(z.int(), z.gte(1), z.lte(9)),
          text: noteShape,
        }),
      )
      .check(z.maxLength(9)),
    /** Pieces to compare with, such as a shop's cracker for crisp: what stands at a point of the scale. */
    references: z.exactOptional(
      z
        .array(
          z.strictObject({
            at: z.number().check(z.int(), z.gte(1), z.lte(9)),
            text: noteShape,
          }),
        )
        .check(z.maxLength(9)),
    ),
  }),
  /** 1 much too little … 3 just about right … 5 much too much. */
  z.strictObject({ kind: z.literal('just-about-right'), low: noteShape, high: noteShape }),
  z.strictObject({
    kind: z.literal('measured'),
    unitOfMeasure: z.string().check(z.maxLength(40)),
    measure: z.enum(measures),
  }),
])

/** What a good answer is: the higher the better, the lower the better, the nearer to a target, or neither. */
const betterShape = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('higher') }),
  z.strictObject({ is: z.literal('lower') }),
  z.strictObject({ is: z.literal('target'), at: z.number() }),
  z.strictObject({ is: z.literal('neither') }),
])

/** Something recorded that the factor may change. Baker's answers on a scale are handling scores: not blind, and said so. */
export const responseShape = z.strictObject({
  id: idShape,
  name: nameShape,
  by: z.enum(['baker', 'taster']),
  about: z.enum(['batch', 'piece', 'serving']),
  scale: answerScaleShape,
  better: betterShape,
  /** What the word means, as tasters read it under the question. */
  definition: z.exactOptional(noteShape),
  /** The smallest difference the baker would care about, in the response's own unit; null when none was named. */
  margin: z.nullable(z.number().check(z.gt(0))),
})

export type Measure = (typeof measures)[number]
export type AnswerScale = z.infer<typeof answerScaleShape>
export type Better = z.infer<typeof betterShape>
export type Response = z.infer<typeof responseShape>
