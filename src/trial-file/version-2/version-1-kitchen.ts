import * as z from 'zod/mini'
import {
  atShape,
  celsiusShape,
  countShape,
  gramsShape,
  idShape,
  nameShape,
  noteShape,
  shareShape,
} from './version-1-quantities.ts'

/* Frozen: see version-1-quantities.ts. */
const thing = { id: idShape, note: z.exactOptional(noteShape) }

const scaleShape = z.strictObject({
  ...thing,
  kind: z.literal('scale'),
  name: nameShape,
  resolutionGrams: z.number().check(z.gt(0), z.lte(1000)),
  capacityGrams: z.number().check(z.gt(0), z.lte(1e6)),
})

const thermometerShape = z.strictObject({
  ...thing,
  kind: z.literal('thermometer'),
  name: nameShape,
  spreadCelsius: z.number().check(z.gte(0), z.lte(20)),
})

const ovenShape = z.strictObject({
  ...thing,
  kind: z.literal('oven'),
  name: nameShape,
  places: countShape,
  maxCelsius: z.exactOptional(celsiusShape),
})

const mixerShape = z.strictObject({
  ...thing,
  kind: z.literal('mixer'),
  name: nameShape,
  leastDoughGrams: gramsShape,
  mostDoughGrams: gramsShape,
  workKilojoulesPerKilogram: z.exactOptional(z.number().check(z.gte(0), z.lte(100))),
  bowlGrams: z.exactOptional(gramsShape),
  bowlHeat: z.exactOptional(z.number().check(z.gt(0), z.lte(5))),
})

const fridgeShape = z.strictObject({
  ...thing,
  kind: z.literal('fridge'),
  name: nameShape,
  celsius: celsiusShape,
  places: z.exactOptional(countShape),
  freezerCelsius: z.exactOptional(celsiusShape),
})

const tapShape = z.strictObject({
  ...thing,
  kind: z.literal('tap'),
  name: nameShape,
  coldestCelsius: celsiusShape,
  warmestCelsius: celsiusShape,
})

const flourLotShape = z.strictObject({
  ...thing,
  kind: z.literal('flour'),
  name: nameShape,
  lot: noteShape,
  moisturePercent: z.exactOptional(shareShape),
  proteinPercent: z.exactOptional(shareShape),
})

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
