import * as z from 'zod/mini'
import { countShape, listOf, wholeShape } from '@/core/record/count.ts'

/** The most entries that one device may be ahead of a gap; what lies further on is asked for again once the gap is filled. */
export const mostAhead = 512

/**
 * How far the owner of a table has taken in the entries of one device: all up to `to`, but those `missing`. It travels sealed,
 * and only by it does an entry leave the outbox of its device: that the hub took an entry says nothing of it.
 */
export const receiptShape = z.strictObject({
  to: wholeShape,
  missing: listOf(countShape, { most: mostAhead }),
})
export type Receipt = z.infer<typeof receiptShape>

/** Before the first entry. */
export const noReceipt: Receipt = { to: 0, missing: [] }

export type Counted =
  | { ok: true; receipt: Receipt }
  /** `known`: it was taken in before. `too-far`: so far ahead that the gap is not kept; it comes again. */
  | { ok: false; reason: 'known' | 'too-far' }

/** The receipt with one entry more; an entry that leaves a gap behind it is taken, and the gap is told as missing. */
export function counted({ to, missing }: Receipt, count: number): Counted {
  if (missing.includes(count))
    return { ok: true, receipt: { to, missing: missing.filter((each) => each !== count) } }
  if (count <= to) return { ok: false, reason: 'known' }
  const gap = Array.from({ length: count - to - 1 }, (_, at) => to + 1 + at)
  if (missing.length + gap.length > mostAhead) return { ok: false, reason: 'too-far' }
  return { ok: true, receipt: { to: count, missing: [...missing, ...gap] } }
}

/** The counts, from 1 to `written`, that a device still keeps in its outbox: those asked for again first, in their order. */
export function waiting({ to, missing }: Receipt, written: number): number[] {
  const later = Array.from({ length: Math.max(0, written - to) }, (_, at) => to + 1 + at)
  return [...missing.filter((count) => count <= written), ...later]
}
