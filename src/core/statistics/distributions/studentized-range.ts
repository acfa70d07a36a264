import { findRoot } from '@/core/statistics/roots/find-root.ts'
import { chebyshevPanels } from './chebyshev-panels.ts'
import { averageOverScale } from './chi-mixture.ts'
import { normalRangeLower, normalRangeUpper } from './normal-range.ts'
import { overEstimatedSpread } from './over-estimated-spread.ts'
import { tHalfWidth } from './students-t.ts'
import type { Tails } from './tails.ts'

type RangeOfNormals = {
  upper: (q: number, df: number) => number
  logLowerShape: (w: number) => number
}

/** Beyond it the range's tail, about exp(−w²/4), is smaller than any double. */
const farthest = 50
const ranges = new Map<number, RangeOfNormals>()
const quantiles = new Map<string, number>()

/**
 * Chance that the studentized range exceeds q: the range of k means over an independent estimate of their standard error
 * with `df` degrees of freedom. What Tukey's comparison of all pairs rests on.
 *
 * The range of normals (see `normalRangeUpper`) is tabulated once for each k by Chebyshev panels of its logarithm and then
 * averaged over the estimated spread (see `overEstimatedSpread`). k from 2 up, df above 0, Infinity included.
 */
export function studentizedRangeUpper(q: number, k: number, df: number): number {
  return q > 0 ? rangeOf(k).upper(q, df) : 1
}

/** Both tails of the studentized range, each to its own relative precision; the lower costs a table of its own. */
export function studentizedRangeTails(q: number, k: number, df: number): Tails {
  if (!(q > 0)) return { lower: 0, upper: 1 }
  const upper = studentizedRangeUpper(q, k, df)
  return upper > 0.5 ? { lower: lowerTail(q, k, df), upper } : { lower: 1 - upper, upper }
}

/**
 * The studentized range that is exceeded with chance `upper`; kept once computed, since every pair of a fit asks for the same.
 *
 * @example studentizedRangeUpperQuantile(0.05, 2, 10) // 3.1511 (two means: √2 times Student's 2.2281)
 */
export function studentizedRangeUpperQuantile(upper: number, k: number, df: number): number {
  const key = `${upper} ${k} ${df}`
  const known = quantiles.get(key)
  if (known !== undefined) return known
  const found = k === 2 ? Math.SQRT2 * tHalfWidth(1 - upper, df) : solve(upper, k, df)
  if (quantiles.size > 2000) quantiles.clear()
  quantiles.set(key, found)
  return found
}

function solve(upper: number, k: number, df: number): number {
  const missBy = (logQ: number) => {
    const q = Math.exp(logQ)
    return upper <= 0.5
      ? Math.log(upper / studentizedRangeUpper(q, k, df))
      : Math.log(studentizedRangeTails(q, k, df).lower / (1 - upper))
  }
  // Šidák's bound from above and the single pair from below hold the quantile between them.
  const low = Math.SQRT2 * tHalfWidth(1 - upper, df)
  const pairs = (k * (k - 1)) / 2
  const high = Math.SQRT2 * tHalfWidth((1 - upper) ** (1 / pairs), df)
  return Math.exp(findRoot(missBy, Math.log(low), Math.log(high * (1 + 1e-9)), 1e-12))
}

function lowerTail(q: number, k: number, df: number): number {
  const { logLowerShape } = rangeOf(k)
  const valueAt = (scale: number) => {
    const w = q * scale
    return w > farthest ? 1 : Math.exp(logLowerShape(w) + (k - 1) * Math.log(w / (1 + w)))
  }
  return averageOverScale(df, valueAt)
}

function rangeOf(k: number): RangeOfNormals {
  const known = ranges.get(k)
  if (known) return known
  const logUpper = chebyshevPanels((w) => Math.log(normalRangeUpper(w, k)), farthest)
  const range = {
    upper: overEstimatedSpread((w) => (w > farthest ? 0 : Math.exp(logUpper(w))), 0.25),
    // Near 0 the chance goes like w^(k−1): that factor is taken out, so that what is interpolated is smooth.
    logLowerShape: chebyshevPanels(
      (w) => Math.log(normalRangeLower(w, k)) - (k - 1) * Math.log(w / (1 + w)),
      farthest,
    ),
  }
  ranges.set(k, range)
  return range
}
