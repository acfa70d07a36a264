/**
 * How much later the hub's clock stands than a device's, in milliseconds, from the entries that came from it: an entry cannot
 * arrive before it was written, so the least of many differences is nearest to the truth, and what is over it was the way.
 * Null before the first entry.
 *
 * @example clockOffset([{ writtenAt: 1000, arrivedAt: 61_020 }, { writtenAt: 5000, arrivedAt: 65_005 }]) // 60_005
 */
export function clockOffset(
  entries: readonly { writtenAt: number; arrivedAt: number }[],
): number | null {
  if (entries.length === 0) return null
  return Math.min(...entries.map(({ writtenAt, arrivedAt }) => arrivedAt - writtenAt))
}

/** A time of one device as another device's clock would have told it, by the offsets of both to the same hub. */
export function asToldBy(at: number, offset: number, otherOffset: number): number {
  return at + offset - otherOffset
}
