import stdlibCdf from '@stdlib/stats-base-dists-t-cdf'
import stdlibQuantile from '@stdlib/stats-base-dists-t-quantile'
import type { Tails } from './tails.ts'

/**
 * Both tails of Student's t with any positive degrees of freedom.
 *
 * @example tTails(0, 5) // {"lower": 0.5, "upper": 0.5} (by symmetry)
 */
export function tTails(t: number, df: number): Tails {
  return { lower: stdlibCdf(t, df), upper: stdlibCdf(-t, df) }
}

/**
 * Chance of a t at least this far from zero on either side.
 *
 * @example tTwoSidedP(2.2281, 10) // 0.0500 (any table of t)
 */
export function tTwoSidedP(t: number, df: number): number {
  return Math.min(1, 2 * stdlibCdf(-Math.abs(t), df))
}

/**
 * The t with a share p below it. Upper quantiles are taken from the lower tail, where the package is exact.
 *
 * @example tQuantile(0.975, 10) // 2.2281 (any table of t)
 */
export function tQuantile(p: number, df: number): number {
  if (p === 0.5) return 0
  return p < 0.5 ? lowerQuantile(p, df) : -lowerQuantile(1 - p, df)
}

/**
 * Half-width factor of a two-sided interval: the t that leaves (1 − confidence)/2 above it.
 *
 * @example tHalfWidth(0.95, 4) // 2.7764 (any table of t)
 */
export function tHalfWidth(confidence: number, df: number): number {
  return -lowerQuantile((1 - confidence) / 2, df)
}

const known = new Map<number, Map<number, number>>()
/** So many errors are asked of one number of degrees of freedom, and so many of these are kept. */
const mostKept = 500

/** Kept once computed: the intervals and bounds of a fit ask for the same few, and each takes as long as a small fit. */
function lowerQuantile(p: number, df: number): number {
  let ofDf = known.get(df)
  if (!ofDf || ofDf.size > mostKept) {
    if (known.size > mostKept) known.clear()
    ofDf = new Map()
    known.set(df, ofDf)
  }
  const before = ofDf.get(p)
  if (before !== undefined) return before
  const found = stdlibQuantile(p, df)
  ofDf.set(p, found)
  return found
}
