import * as z from 'zod/mini'
import { formulaShape } from '@/core/formula/formula-record.ts'
import { mixingWayShape, statedWorkShape } from '@/core/kitchen/mixing-way.ts'
import { countTo, listOf } from '@/core/record/count.ts'
import { atShape, idShape, zoneShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { celsiusShape, gramsShape } from '@/core/record/quantity.ts'
import { nameShape, noteShape } from '@/core/record/text.ts'
import { stepShape } from '@/core/trial/step.ts'

/** A length inside a tin or pan, cm. */
const centimetres = z.number().check(z.gt(0), z.lte(300))
const tinShape = z.discriminatedUnion('is', [
  z.strictObject({
    is: z.literal('box'),
    topLength: centimetres,
    topWidth: centimetres,
    bottomLength: centimetres,
    bottomWidth: centimetres,
    height: centimetres,
  }),
  z.strictObject({
    is: z.literal('round'),
    topDiameter: centimetres,
    bottomDiameter: centimetres,
    height: centimetres,
  }),
  /** Of any other form: what it holds to the brim, as measured with water. */
  z.strictObject({ is: z.literal('volume'), millilitres: z.number().check(z.gt(0), z.lte(1e5)) }),
])
const panShape = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('rectangle'), length: centimetres, width: centimetres }),
  z.strictObject({ is: z.literal('circle'), diameter: centimetres }),
  z.strictObject({
    is: z.literal('area'),
    squareCentimetres: z.number().check(z.gt(0), z.lte(1e5)),
  }),
])
/** What hands and bowl keep of the dough, in percent of it. */
const lossShape = z.number().check(z.gte(0), z.lt(100))
const howMany = countTo(most.piecesOfBatch)

/**
 * How much is made: pieces and their mass, the flour, tins by what they hold, or pans by their floor. `gramsPerMillilitre` is
 * dough for each millilitre of tin, `gramsPerSquareCentimetre` dough for each square centimetre of pan.
 */
export const yieldShape = z.discriminatedUnion('by', [
  z.strictObject({
    by: z.literal('pieces'),
    pieces: howMany,
    pieceGrams: gramsShape,
    lossPercent: lossShape,
  }),
  z.strictObject({ by: z.literal('flour'), flourGrams: gramsShape }),
  z.strictObject({
    by: z.literal('tins'),
    pieces: howMany,
    tin: tinShape,
    gramsPerMillilitre: z.number().check(z.gt(0), z.lte(3)),
    lossPercent: lossShape,
  }),
  z.strictObject({
    by: z.literal('pans'),
    pieces: howMany,
    pan: panShape,
    gramsPerSquareCentimetre: z.number().check(z.gt(0), z.lte(10)),
    lossPercent: lossShape,
  }),
])

/** Temperatures from which the day's water follows; the room and the flour are those of the day. */
const houseTemperatureShape = z.strictObject({
  wantedDoughCelsius: celsiusShape,
  flourCelsius: celsiusShape,
  roomCelsius: celsiusShape,
  mixedBy: z.exactOptional(mixingWayShape),
  mixingKilojoulesPerKilogram: z.exactOptional(statedWorkShape),
})

/** Why a level became the house's: the end of the findings, the baker's own pick, or nothing settled and the usual kept. */
export const adoptedBecause = ['easiest', 'picked', 'usual'] as const

/** What a revision rests on: a trial, the level of it, why it was taken, and what the findings said then. */
const restsOnShape = z.strictObject({
  trialId: idShape,
  question: nameShape,
  level: nameShape,
  because: z.enum(adoptedBecause),
  sessions: z.number().check(z.int(), z.gte(0)),
  tasters: z.number().check(z.int(), z.gte(0)),
  /** The findings' own sentences at that time; empty when there were none. */
  said: noteShape,
})

/** One state of a house formula, whole. */
const revisionShape = z.strictObject({
  at: atShape,
  zone: zoneShape,
  formula: formulaShape,
  steps: listOf(stepShape, { most: most.steps }),
  temperature: z.nullable(houseTemperatureShape),
  yield: yieldShape,
  restsOn: listOf(restsOnShape, { most: most.sessions }),
  /** What changed and why, in the baker's words; may be empty. */
  note: noteShape,
})

/** The most states of one house formula that are kept. */
export const mostHouseRevisions = 500

/**
 * A house formula: a level adopted, kept as a record of its own in the notebook. Its revisions stand in the order they were
 * made; the last is the one in force, and none is ever changed.
 */
export const houseShape = z.strictObject({
  id: idShape,
  name: nameShape,
  createdAt: atShape,
  revisions: listOf(revisionShape, { most: mostHouseRevisions }).check(z.minLength(1)),
  binnedAt: z.exactOptional(atShape),
})

export type Yield = z.infer<typeof yieldShape>
export type RestsOn = z.infer<typeof restsOnShape>
export type HouseTemperature = z.infer<typeof houseTemperatureShape>
export type HouseRevision = z.infer<typeof revisionShape>
export type House = z.infer<typeof houseShape>

/** The revision of a house formula that is baked now. */
export function houseInForce(house: House): HouseRevision {
  const last = house.revisions.at(-1)
  if (!last) throw new Error(`house formula ${house.id} has no revision`)
  return last
}
