import * as z from 'zod/mini'
import { countShape } from '@/core/record/count.ts'
import { atShape, idShape } from '@/core/record/id-and-stamp.ts'
import { celsiusShape, gramsShape, secondsShape, shareShape } from '@/core/record/quantity.ts'
import { nameShape, noteShape } from '@/core/record/text.ts'
import { mixingWayShape, statedWorkShape } from './mixing-way.ts'

const thing = { id: idShape, note: z.exactOptional(noteShape) }

/**
 * A kitchen scale: every reading is a multiple of `resolutionGrams`, up to `capacityGrams`. `errorGrams` and `errorPercent` are
 * how far it may be off beyond that, plus or minus: at any weight, and in proportion to it.
 */
const scaleShape = z.strictObject({
  ...thing,
  kind: z.literal('scale'),
  name: nameShape,
  resolutionGrams: z.number().check(z.gt(0), z.lte(1000)),
  capacityGrams: z.number().check(z.gt(0), z.lte(1e6)),
  errorGrams: z.exactOptional(z.number().check(z.gte(0), z.lte(1000))),
  errorPercent: z.exactOptional(z.number().check(z.gte(0), z.lte(20))),
})

/** A thermometer; `spreadCelsius` is how far it may be off, plus or minus. */
const thermometerShape = z.strictObject({
  ...thing,
  kind: z.literal('thermometer'),
  name: nameShape,
  spreadCelsius: z.number().check(z.gte(0), z.lte(20)),
})

/** An oven with room for `places` pieces at once. */
const ovenShape = z.strictObject({
  ...thing,
  kind: z.literal('oven'),
  name: nameShape,
  places: countShape,
  maxCelsius: z.exactOptional(celsiusShape),
  /** How long it needs to be as hot again after a load, and to grow 1 K hotter or cooler. */
  recoverySeconds: z.exactOptional(secondsShape),
  heatSecondsPerKelvin: z.exactOptional(z.number().check(z.gte(0), z.lte(600))),
  coolSecondsPerKelvin: z.exactOptional(z.number().check(z.gte(0), z.lte(600))),
})

/** A mixer (or hands) with the least and most dough it mixes well, and its mixing work per kg flour where known. */
const mixerShape = z.strictObject({
  ...thing,
  kind: z.literal('mixer'),
  name: nameShape,
  leastDoughGrams: gramsShape,
  mostDoughGrams: gramsShape,
  way: z.exactOptional(mixingWayShape),
  workKilojoulesPerKilogram: z.exactOptional(statedWorkShape),
  bowlGrams: z.exactOptional(gramsShape),
  /** Specific heat of the bowl, kJ/(kg K): about 0.5 for steel, 0.8 for glass. */
  bowlHeat: z.exactOptional(z.number().check(z.gt(0), z.lte(5))),
})

const fridgeShape = z.strictObject({
  ...thing,
  kind: z.literal('fridge'),
  name: nameShape,
  celsius: celsiusShape,
  places: z.exactOptional(countShape),
  /** The freezer's temperature, where ice comes from. */
  freezerCelsius: z.exactOptional(celsiusShape),
})

const tapShape = z.strictObject({
  ...thing,
  kind: z.literal('tap'),
  name: nameShape,
  coldestCelsius: celsiusShape,
  warmestCelsius: celsiusShape,
})

/** One bag of flour: the same name in another bag or lot is another flour to a careful trial. */
const flourLotShape = z.strictObject({
  ...thing,
  kind: z.literal('flour'),
  name: nameShape,
  lot: noteShape,
  moisturePercent: z.exactOptional(shareShape),
  proteinPercent: z.exactOptional(shareShape),
  /** Water it takes to one feel, % of flour, by the baker's own trying or the mill's sheet. */
  absorptionPercent: z.exactOptional(shareShape),
})

/**
 * A taster, known by initials or a code. The initials stand in this record alone, so that a taster can be erased:
 * then `initials` becomes empty and `erasedAt` says when.
 */
const tasterShape = z.strictObject({
  ...thing,
  kind: z.literal('taster'),
  initials: z.string().check(z.maxLength(12)),
  erasedAt: z.exactOptional(atShape),
})

export const kitchenThingShape = z.discriminatedUnion('kind', [
  scaleShape,
  thermometerShape,
  ovenShape,
  mixerShape,
  fridgeShape,
  tapShape,
  flourLotShape,
  tasterShape,
])

export type Scale = z.infer<typeof scaleShape>
export type Oven = z.infer<typeof ovenShape>
export type Mixer = z.infer<typeof mixerShape>
export type Fridge = z.infer<typeof fridgeShape>
export type Tap = z.infer<typeof tapShape>
export type Taster = z.infer<typeof tasterShape>
export type KitchenThing = z.infer<typeof kitchenThingShape>
export type KitchenKind = KitchenThing['kind']
