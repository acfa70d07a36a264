import * as z from 'zod/mini'
import {
  celsiusShape,
  countShape,
  gramsShape,
  idShape,
  nameShape,
  noteShape,
  percentShape,
  shareShape,
} from './version-1-quantities.ts'

/* Frozen: see version-1-quantities.ts. */
const ingredientKinds = ['flour', 'water', 'liquid', 'salt', 'yeast', 'fat', 'other'] as const

const yeastForms = ['instant', 'active-dry', 'fresh'] as const

const ingredientShape = z.strictObject({
  id: idShape,
  name: nameShape,
  kind: z.enum(ingredientKinds),
  percent: percentShape,
  waterPercent: z.exactOptional(shareShape),
  yeastForm: z.exactOptional(z.enum(yeastForms)),
  celsius: z.exactOptional(celsiusShape),
  flourLotId: z.exactOptional(idShape),
})

const prefermentShape = z.strictObject({
  id: idShape,
  name: nameShape,
  kind: z.enum(['poolish', 'biga', 'sponge', 'starter', 'soaker', 'other']),
  flourSharePercent: shareShape,
  parts: z.array(z.strictObject({ ingredientId: idShape, percent: percentShape })),
  celsius: z.exactOptional(celsiusShape),
})

const batchSizeShape = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('flour'), flourGrams: gramsShape }),
  z.strictObject({
    by: z.literal('pieces'),
    pieces: countShape,
    pieceGrams: gramsShape,
    lossPercent: z.number().check(z.gte(0), z.lt(100)),
  }),
])

export const formulaShape = z.strictObject({
  ingredients: z.array(ingredientShape),
  preferments: z.array(prefermentShape),
  batchSize: batchSizeShape,
})

export const expectationShape = z.strictObject({
  direction: z.enum(['rises', 'falls', 'best-inside', 'no-difference']),
  bestGuess: z.nullable(z.number()),
  why: z.exactOptional(noteShape),
})

const splitPoints = ['mix', 'divide', 'proof', 'oven'] as const

const actsOnShape = z.discriminatedUnion('on', [
  z.strictObject({ on: z.literal('hydration'), ingredientId: idShape }),
  z.strictObject({ on: z.literal('salt'), ingredientId: idShape }),
  z.strictObject({ on: z.literal('yeast'), ingredientId: idShape }),
  z.strictObject({ on: z.literal('ingredient'), ingredientId: idShape }),
  z.strictObject({ on: z.literal('preferment-share'), prefermentId: idShape }),
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

const heldShape = z.enum(['flour', 'dough', 'piece'])

export const factorShape = z.strictObject({
  name: nameShape,
  unitOfMeasure: z.string().check(z.maxLength(40)),
  acts: actsOnShape,
  splitsAt: z.enum(splitPoints),
  held: heldShape,
})

const changeShape = z.discriminatedUnion('what', [
  z.strictObject({
    what: z.literal('ingredient'),
    ingredientId: idShape,
    name: nameShape,
    percent: z.exactOptional(percentShape),
  }),
  z.strictObject({ what: z.literal('hydration'), percent: percentShape }),
  z.strictObject({ what: z.literal('tool'), name: nameShape }),
  z.strictObject({ what: z.literal('step'), stepId: idShape, done: z.boolean() }),
  z.strictObject({ what: z.literal('note'), text: noteShape }),
])

export const levelShape = z.strictObject({
  id: idShape,
  value: z.nullable(z.number().check(z.gte(-1e6), z.lte(1e6))),
  label: nameShape,
  control: z.boolean(),
  changes: z.exactOptional(z.array(changeShape)),
})
