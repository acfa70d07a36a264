import * as z from 'zod/mini'
import { countShape, listOf, wholeShape } from '@/core/record/count.ts'
import { atShape, idShape, zoneShape } from '@/core/record/id-and-stamp.ts'
import { most } from '@/core/record/most.ts'
import { servingCodeShape } from './serving-code.ts'

const letterShape = z.string().check(z.regex(/^[A-Z]{1,2}$/))

/** One dough: one level in this session, or (levelId null) one dough for all levels when the factor splits later. */
const batchShape = z.strictObject({
  id: idShape,
  letter: letterShape,
  levelId: z.nullable(idShape),
})

/** A ball or loaf divided from a batch. Counted pieces belong to a flight; the warm-up and spares to none. */
const pieceShape = z.strictObject({
  id: idShape,
  batchId: idShape,
  levelId: idShape,
  flightId: z.nullable(idShape),
  role: z.enum(['counted', 'warm-up', 'spare']),
})

/** One piece of every level, in the order it is baked (and, served as baked, tasted). */
const flightShape = z.strictObject({
  id: idShape,
  number: countShape,
  pieceIds: listOf(idShape, { most: most.piecesOfSession }),
})

/** Pieces in the oven together; the index in `pieceIds` is the place. */
const loadShape = z.strictObject({
  id: idShape,
  number: countShape,
  pieceIds: listOf(idShape, { most: most.piecesOfSession }),
})

/** One piece in one flight under one code, the same for all tasters. */
const servingShape = z.strictObject({
  id: idShape,
  code: servingCodeShape,
  pieceId: idShape,
  flightId: z.nullable(idShape),
  /** The serving of the same piece that this one repeats under its own code; it speaks of the taster, not of the level. */
  repeats: z.exactOptional(idShape),
})

/** The servings of one taster in the order they are offered; the index + 1 is the position. */
const tasterOrderShape = z.strictObject({
  tasterId: idShape,
  servingIds: listOf(idShape, { most: most.piecesOfSession }),
})

/** Samples of a tell-apart test: for triangle and duo-trio three codes, for paired two; `answerCode` is the odd or matching one. */
const tellApartSetShape = z.strictObject({
  id: idShape,
  tasterId: idShape,
  samples: listOf(z.strictObject({ code: servingCodeShape, levelId: idShape }), {
    most: most.levels,
  }),
  answerCode: servingCodeShape,
})

/** Drawn once when the session is begun and kept as facts: never recomputed. */
const dealtShape = z.strictObject({
  seed: z.number().check(z.int(), z.gte(0), z.lte(0xffffffff)),
  drawVersion: countShape,
  /** The letter of each level's line, dealt at random against the levels. */
  letters: listOf(z.strictObject({ levelId: idShape, letter: letterShape }), { most: most.levels }),
  /** Batches in the order they are mixed and handled all day. */
  doughOrder: listOf(idShape, { most: most.batches }),
  /** True when this session's dough order is the previous one's reversed. */
  reversed: z.boolean(),
  flights: listOf(flightShape, { most: most.flights }),
  loads: listOf(loadShape, { most: most.piecesOfSession }),
  servings: listOf(servingShape, { most: most.piecesOfSession }),
  tasterOrders: listOf(tasterOrderShape, { most: most.tasters }),
  sets: listOf(tellApartSetShape, { most: most.piecesOfSession }),
  /**
   * The tickets of the lidded cups, by the level that each makes. While they are not turned, which level a dough is stands in
   * no record: the levels of doughs, pieces and letters are place-holders until the unsealing.
   */
  tickets: z.exactOptional(
    listOf(z.strictObject({ levelId: idShape, ticket: servingCodeShape }), { most: most.levels }),
  ),
})

/** One tasting with all that was made for it: batches, pieces and what was dealt. */
export const sessionShape = z.strictObject({
  id: idShape,
  trialId: idShape,
  planId: idShape,
  number: countShape,
  createdAt: atShape,
  zone: zoneShape,
  /** Sessions added after the planned ones are numbered past them, and said so. */
  plannedSessions: wholeShape,
  batches: listOf(batchShape, { most: most.batches }),
  pieces: listOf(pieceShape, { most: most.piecesOfSession }),
  dealt: dealtShape,
})

export type Batch = z.infer<typeof batchShape>
export type Piece = z.infer<typeof pieceShape>
export type Flight = z.infer<typeof flightShape>
export type Serving = z.infer<typeof servingShape>
export type TellApartSet = z.infer<typeof tellApartSetShape>
export type Session = z.infer<typeof sessionShape>
