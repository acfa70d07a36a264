import * as z from 'zod/mini'
import { expectationShape, factorShape, formulaShape, levelShape } from './version-1-formula.ts'
import {
  atShape,
  celsiusShape,
  countShape,
  gramsShape,
  idShape,
  nameShape,
  noteShape,
  secondsShape,
  wholeShape,
  zoneShape,
} from './version-1-quantities.ts'

/* Frozen: see version-1-quantities.ts. */
const measures = [
  'own',
  'bake-loss',
  'bake-time',
  'rise',
  'oven-spring',
  'specific-volume',
  'dough-temperature',
  'core-temperature',
] as const

const answerScaleShape = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('nine-point'),
    anchors: z.array(
      z.strictObject({
        at: z.number().check(z.int(), z.gte(1), z.lte(9)),
        text: noteShape,
      }),
    ),
  }),
  z.strictObject({ kind: z.literal('just-about-right'), low: noteShape, high: noteShape }),
  z.strictObject({
    kind: z.literal('measured'),
    unitOfMeasure: z.string().check(z.maxLength(40)),
    measure: z.enum(measures),
  }),
])

const betterShape = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('higher') }),
  z.strictObject({ is: z.literal('lower') }),
  z.strictObject({ is: z.literal('target'), at: z.number() }),
  z.strictObject({ is: z.literal('neither') }),
])

const responseShape = z.strictObject({
  id: idShape,
  name: nameShape,
  by: z.enum(['baker', 'taster']),
  about: z.enum(['batch', 'piece', 'serving']),
  scale: answerScaleShape,
  better: betterShape,
  margin: z.nullable(z.number().check(z.gt(0))),
})

const stepKinds = [
  'feed',
  'autolyse',
  'mix',
  'rest',
  'fold',
  'divide',
  'ball',
  'proof',
  'cold-proof',
  'warm-up',
  'open',
  'top',
  'slash',
  'bake',
  'cool',
  'cut',
] as const

const endsByShape = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('clock') }),
  z.strictObject({
    by: z.literal('mark'),
    mark: z.enum(['rise', 'poke', 'windowpane', 'own']),
    risePercent: z.exactOptional(z.number().check(z.gt(0), z.lte(1000))),
    text: z.exactOptional(noteShape),
  }),
  z.strictObject({
    by: z.literal('reading'),
    of: z.enum(['dough', 'oven-floor', 'core']),
    celsius: celsiusShape,
  }),
])

const stepShape = z.strictObject({
  id: idShape,
  kind: z.enum(stepKinds),
  name: nameShape,
  per: z.enum(['batch', 'piece']),
  repeats: countShape,
  handsSeconds: secondsShape,
  waitSeconds: secondsShape,
  toleranceSeconds: secondsShape,
  endsBy: endsByShape,
  uses: z.array(z.enum(['hands', 'mixer', 'oven'])),
  celsius: z.exactOptional(celsiusShape),
})

const temperaturePlanShape = z.strictObject({
  wantedDoughCelsius: celsiusShape,
  flourCelsius: celsiusShape,
  roomCelsius: celsiusShape,
  matched: z.boolean(),
  mixingKilojoulesPerKilogram: z.exactOptional(z.number().check(z.gte(0), z.lte(100))),
})

const sharedDoseShape = z.strictObject({
  ingredientId: idShape,
  by: z.enum(['dry-mix', 'stock']),
  stockGrams: z.exactOptional(gramsShape),
  stockWaterGrams: z.exactOptional(gramsShape),
  doseGrams: z.exactOptional(gramsShape),
})

const tellApartShape = z.strictObject({
  test: z.enum(['triangle', 'duo-trio', 'paired']),
  attribute: z.exactOptional(nameShape),
  levelIds: z.array(idShape).check(z.length(2)),
})

export const planShape = z.strictObject({
  id: idShape,
  trialId: idShape,
  revision: countShape,
  at: atShape,
  zone: zoneShape,
  question: nameShape,
  expectation: z.nullable(expectationShape),
  factor: factorShape,
  levels: z.array(levelShape),
  formula: formulaShape,
  steps: z.array(stepShape),
  responses: z.array(responseShape),
  mainResponseId: z.nullable(idShape),
  serving: z.enum(['as-baked', 'rested']),
  flights: countShape,
  sparePieces: wholeShape,
  warmUpPiece: z.boolean(),
  placesPerLoad: countShape,
  plannedSessions: countShape,
  tasters: z.array(z.strictObject({ tasterId: idShape, knows: z.boolean() })),
  tastersTalk: z.boolean(),
  keyKeptBy: z.enum(['baker', 'helper']),
  pairsOfHands: countShape,
  servingRule: noteShape,
  doughs: z.enum(['one', 'apart']),
  temperature: z.nullable(temperaturePlanShape),
  sharedDoses: z.array(sharedDoseShape),
  tellApart: z.nullable(tellApartShape),
  kitchenIds: z.array(idShape),
  accepted: z.array(z.string().check(z.maxLength(64))),
})

const followsShape = z.strictObject({
  trialId: idShape,
  how: z.enum(['confirms', 'narrows', 'repeats', 'copies']),
})

export const trialShape = z.strictObject({
  id: idShape,
  createdAt: atShape,
  zone: zoneShape,
  planId: idShape,
  seed: z.number().check(z.int(), z.gte(0), z.lte(0xffffffff)),
  revision: wholeShape,
  note: noteShape,
  follows: z.exactOptional(followsShape),
  archivedAt: z.exactOptional(atShape),
  binnedAt: z.exactOptional(atShape),
})
