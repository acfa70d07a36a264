import * as z from 'zod/mini'
import { formulaShape } from '@/core/formula/formula-record.ts'
import { mixingWayShape, statedWorkShape } from '@/core/kitchen/mixing-way.ts'
import { countShape, countTo, listOf } from '@/core/record/count.ts'
import { atShape, idShape, zoneShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { celsiusShape, gramsShape } from '@/core/record/quantity.ts'
import { nameShape, noteShape } from '@/core/record/text.ts'
import { atTableShape } from './at-table.ts'
import { dayWishesShape } from './day-wishes.ts'
import { expectationShape } from './expectation.ts'
import { factorShape } from './factor.ts'
import { levelShape } from './level.ts'
import { responseShape } from './response.ts'
import { stepShape } from './step.ts'
import { writtenFirstShape } from './written-first.ts'

/** Temperatures known before the mix, from which the water temperature of each batch follows. */
const temperaturePlanShape = z.strictObject({
  wantedDoughCelsius: celsiusShape,
  flourCelsius: celsiusShape,
  roomCelsius: celsiusShape,
  /** Own water temperature for each batch (matched), or one for all. */
  matched: z.boolean(),
  /** How the doughs are mixed, where it is neither the mixer's own way nor what the steps use. */
  mixedBy: z.exactOptional(mixingWayShape),
  mixingKilojoulesPerKilogram: z.exactOptional(statedWorkShape),
})

/** An ingredient too small for the scale, shared by all batches as one dry mix or one stock. */
const sharedDoseShape = z.strictObject({
  ingredientId: idShape,
  by: z.enum(['dry-mix', 'stock']),
  /** For a stock: how much of the ingredient goes into how much water, before dosing. */
  stockGrams: z.exactOptional(gramsShape),
  stockWaterGrams: z.exactOptional(gramsShape),
  doseGrams: z.exactOptional(gramsShape),
})

/** A difference test of two levels: can people tell them apart at all? */
const tellApartShape = z.strictObject({
  test: z.enum(['triangle', 'duo-trio', 'paired']),
  /** Of a pair: what the tasters say there is more of, such as saltiness. */
  attribute: z.exactOptional(nameShape),
  /** What the tasters are asked, in the baker's own words; left out for the usual ones. */
  asks: z.exactOptional(nameShape),
  levelIds: z.array(idShape).check(z.length(2)),
})

/** One revision of a trial's plan. A revision that a session runs is frozen; a change then makes the next revision. */
export const planShape = z.strictObject({
  id: idShape,
  trialId: idShape,
  revision: countShape,
  at: atShape,
  zone: zoneShape,
  question: nameShape,
  expectation: z.nullable(expectationShape),
  /** Left out where nothing beside the expectation was written down first. */
  writtenFirst: z.exactOptional(writtenFirstShape),
  factor: factorShape,
  levels: listOf(levelShape, { most: most.levels }),
  formula: formulaShape,
  steps: listOf(stepShape, { most: most.steps }),
  responses: listOf(responseShape, { most: most.responses }),
  /** The response the verdict is about; null until the baker has chosen one. */
  mainResponseId: z.nullable(idShape),
  serving: z.enum(['as-baked', 'rested']),
  /** One piece of every level is a flight; this many flights a session. */
  flights: countTo(most.flights),
  sparePieces: z.number().check(z.int(), z.gte(0), z.lte(most.sparePieces)),
  /** A control piece baked and tasted first, not counted. */
  warmUpPiece: z.boolean(),
  /** Pieces that stand in the oven together. */
  placesPerLoad: countTo(most.placesPerLoad),
  plannedSessions: countTo(most.plannedSessions),
  tasters: listOf(
    z.strictObject({
      tasterId: idShape,
      knows: z.boolean(),
      /** Who of them bakes; `false` where it was said that they do not. */
      baker: z.exactOptional(z.boolean()),
    }),
    { most: most.tasters },
  ),
  tastersTalk: z.boolean(),
  keyKeptBy: z.enum(['baker', 'helper']),
  pairsOfHands: countTo(most.pairsOfHands),
  /** How a serving is cut, topped and offered, the same for all; empty when nothing was fixed. */
  servingRule: noteShape,
  /** How rested servings are offered: served again, rests, pauses, what is asked at the end; left out where nothing was fixed. */
  atTable: z.exactOptional(atTableShape),
  /** For factors that act late: is one dough divided late, or is each level mixed apart? */
  doughs: z.enum(['one', 'apart']),
  temperature: z.nullable(temperaturePlanShape),
  sharedDoses: listOf(sharedDoseShape, { most: most.ingredients }),
  tellApart: z.nullable(tellApartShape),
  /** Kitchen things the plan uses: scales, thermometers, oven, mixer, fridge, tap, flour lots. */
  kitchenIds: listOf(idShape, { most: most.kitchenThings }),
  /** Differences in handling the baker accepts knowingly, such as fairness items marked "know about it". */
  accepted: listOf(z.string().check(z.maxLength(64)), { most: most.kitchenThings }),
  /**
   * Ingredients, preferments and steps that stand here only because the kind of factor needs one. As they are, they go when
   * the factor turns to another kind.
   */
  putIn: z.exactOptional(listOf(idShape, { most: most.ingredients })),
  /** How its day is to lie by the clock; left out while nothing was said of it. */
  day: z.exactOptional(dayWishesShape),
})

export type TemperaturePlan = z.infer<typeof temperaturePlanShape>
export type SharedDose = z.infer<typeof sharedDoseShape>
export type TellApart = z.infer<typeof tellApartShape>
export type Plan = z.infer<typeof planShape>
