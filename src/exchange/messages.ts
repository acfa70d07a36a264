import * as z from 'zod/mini'
import { listOf, wholeShape } from '@/core/record/count.ts'
import { atShape, idShape } from '@/core/record/id-and-stamp.ts'
import { mostAhead, receiptShape } from '@/core/table/receipt.ts'
import { arrivingEntryShape } from '@/notebook/take-entry.ts'

/** What one device hands over: an entry of its log, or its taster's ballots as far as they are, as a slip's return. */
const entryShape = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('log'), ...arrivingEntryShape.shape }),
  z.strictObject({ kind: z.literal('ballots'), text: z.string().check(z.maxLength(20_000)) }),
  /** The plan as it was changed on the device that it was handed to, packed (`packed-plan.ts`). */
  z.strictObject({ kind: z.literal('plan'), text: z.string().check(z.maxLength(28_000)) }),
  /** The taster does not taste. */
  z.strictObject({ kind: z.literal('declines') }),
])
export type Entry = z.infer<typeof entryShape>

/** What stands in an envelope to the owner; the envelope counts it. `seat`: which device it was, should two use one login. */
export const sentShape = z.strictObject({ seat: idShape, sentAt: atShape, entry: entryShape })
export type Sent = z.infer<typeof sentShape>

/** That a device is there, and how many entries it has written: it is kept nowhere and counted by nothing. */
export const hereShape = z.strictObject({ seat: idShape, sentAt: atShape, written: wholeShape })
export type Here = z.infer<typeof hereShape>

/** What who watches is told. */
const watchedShape = z.strictObject({
  title: z.string(),
  ballots: z.strictObject({ in: wholeShape, expected: wholeShape }),
})
export type Watched = z.infer<typeof watchedShape>

/** The first piece of what a login is sent: the whole state each time, so that a lost one matters to nobody. */
export const noticeShape = z.strictObject({
  /** By the owner's clock. */
  at: atShape,
  /** How far the entries of each seat of this login were taken in. */
  receipts: z.record(idShape, receiptShape),
  /** Entries of this login that were not taken, and why; the newest last. */
  refused: listOf(z.strictObject({ seat: idShape, count: wholeShape, reason: z.string() }), {
    most: mostAhead,
  }),
  /** Of a helper's copy of the trial: which it is, and of how many further pieces. Null where the part holds none. */
  copy: z.nullable(z.strictObject({ version: wholeShape, of: wholeShape })),
  /** Of a helper: the seat of this login to which the plan was handed; null where it is changed elsewhere. Left out for others. */
  planAt: z.exactOptional(z.nullable(idShape)),
  /** A taster's ballot as the text of a slip; null while nothing is dealt. */
  slip: z.nullable(z.string()),
  /** Null for all but who watches. */
  watched: z.nullable(watchedShape),
  /** The table was closed: nothing more comes. */
  closed: z.boolean(),
})
export type Notice = z.infer<typeof noticeShape>

/** A further piece: a part of the packed copy. */
export const copyPieceShape = z.strictObject({ version: wholeShape, data: z.string() })

/** The text of a message as what it should be; null where it is nothing of the kind. */
export function readMessage<Shape extends z.ZodMiniType>(
  shape: Shape,
  text: string,
): z.output<Shape> | null {
  try {
    const read = shape.safeParse(JSON.parse(text))
    return read.success ? read.data : null
  } catch {
    // What is no JSON is no message; whoever reads counts it.
    return null
  }
}
