/**
 * A Fieller confidence set in its shapes: an interval; everything outside an interval (at or below `low`, at or above `high`;
 * null where that arm is missing, which happens only at the very boundary); or every value at all.
 */
export type FiellerSet =
  | { kind: 'interval'; low: number; high: number }
  | { kind: 'outside'; low: number | null; high: number | null }
  | { kind: 'everything'; low: null; high: null }

/**
 * All x with A·x² + B·x + C ≤ 0, as a Fieller set (Fieller 1954, J R Stat Soc B 16:175; from memory).
 *
 * Such a set is never empty, since it holds the estimate itself. A > 0 bounds it; A < 0 leaves the outside of an interval, or
 * everything if there are no roots; A = 0 is a half-line, given as an outside with one arm.
 */
export function fiellerSet(a: number, b: number, c: number): FiellerSet {
  if (a === 0) {
    if (b === 0) return { kind: 'everything', low: null, high: null }
    const edge = -c / b
    return b > 0
      ? { kind: 'outside', low: edge, high: null }
      : { kind: 'outside', low: null, high: edge }
  }
  const discriminant = b * b - 4 * a * c
  if (a < 0 && discriminant <= 0) return { kind: 'everything', low: null, high: null }
  const root = Math.sqrt(Math.max(0, discriminant))
  // The larger sum is formed first and the other root got from the product, so that neither cancels.
  const sum = -0.5 * (b + (b >= 0 ? root : -root))
  const ends = [sum / a, sum === 0 ? 0 : c / sum].sort((p, q) => p - q)
  return { kind: a > 0 ? 'interval' : 'outside', low: ends[0] as number, high: ends[1] as number }
}

/** The same set after x → centre + scale·x, scale positive. */
export function rescaleSet(set: FiellerSet, centre: number, scale: number): FiellerSet {
  const move = (end: number) => centre + scale * end
  if (set.kind === 'everything') return set
  if (set.kind === 'interval') return { kind: 'interval', low: move(set.low), high: move(set.high) }
  return {
    kind: 'outside',
    low: set.low === null ? null : move(set.low),
    high: set.high === null ? null : move(set.high),
  }
}
