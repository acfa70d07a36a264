import * as z from 'zod/mini'
import { idShape } from '@/core/record/id-and-stamp.ts'
import { nameShape } from '@/core/record/text.ts'

/** Where in the method the factor begins to act; before it one dough may serve all levels. */
export const splitPoints = ['mix', 'divide', 'proof', 'oven'] as const
export type SplitsAt = (typeof splitPoints)[number]

/**
 * What the factor moves. Formula factors name the ingredient or preferment they move; method factors name the step.
 * `own` is measured in a unit the baker names and moves nothing the notebook knows of; `choice` has no order.
 */
const actsOnShape = z.discriminatedUnion('on', [
  z.strictObject({ on: z.literal('hydration'), ingredientId: idShape }),
  z.strictObject({ on: z.literal('salt'), ingredientId: idShape }),
  z.strictObject({ on: z.literal('yeast'), ingredientId: idShape }),
  z.strictObject({ on: z.literal('ingredient'), ingredientId: idShape }),
  z.strictObject({ on: z.literal('preferment-share'), prefermentId: idShape }),
  /** A flour's share is taken from another named flour, so that flour stays 100 %. */
  z.strictObject({
    on: z.literal('flour-share'),
    ingredientId: idShape,
    fromIngredientId: idShape,
  }),
  z.strictObject({ on: z.literal('rest-time'), stepId: idShape }),
  z.strictObject({ on: z.literal('proof-time'), stepId: idShape }),
  z.strictObject({ on: z.literal('cold-hours'), stepId: idShape }),
  z.strictObject({ on: z.literal('bake-temperature'), stepId: idShape }),
  z.strictObject({ on: z.literal('bake-time'), stepId: idShape }),
  z.strictObject({ on: z.literal('fold-count'), stepId: idShape }),
  z.strictObject({ on: z.literal('piece-mass') }),
  z.strictObject({ on: z.literal('own') }),
  z.strictObject({ on: z.literal('choice') }),
])

/** What stays the same while a formula factor moves: the batch's flour, its dough, or the piece mass. */
const heldShape = z.enum(['flour', 'dough', 'piece'])

export const factorShape = z.strictObject({
  name: nameShape,
  /** The unit a level is written in, such as "% of flour", "min", "°C"; empty for a choice. */
  unitOfMeasure: z.string().check(z.maxLength(40)),
  acts: actsOnShape,
  splitsAt: z.enum(splitPoints),
  held: heldShape,
})

export type ActsOn = z.infer<typeof actsOnShape>
export type FactorKind = ActsOn['on']
export type Held = z.infer<typeof heldShape>
export type Factor = z.infer<typeof factorShape>
