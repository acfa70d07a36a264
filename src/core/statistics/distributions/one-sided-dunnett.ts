import { findRoot } from '@/core/statistics/roots/find-root.ts'
import { chebyshevPanels } from './chebyshev-panels.ts'
import { highestOfNormalsUpper } from './highest-of-normals.ts'
import { overEstimatedSpread } from './over-estimated-spread.ts'
import { tQuantile } from './students-t.ts'

/** Beyond it the tail, about exp(−w²/2), is smaller than any double. */
const farthest = 37
const tails = new Map<string, (q: number, df: number) => number>()
const quantiles = new Map<string, number>()

/**
 * The t that the highest of several comparisons with one level exceeds with chance `upper`, one-sided: what a bound
 * must allow for when one level is compared with all others at once (Dunnett 1955; Hsu 1984; from memory). `loadings` are the
 * λ of correlations λ_i·λ_j, √½ each when all levels have equal rows; `df` those of the shared residual spread. One
 * comparison is Student's t. `upper` below one half.
 *
 * @example oneSidedDunnettQuantile(0.05, evenLoadings(1), 12) // 1.7823 (one comparison is a one-sided t)
 */
export function oneSidedDunnettQuantile(
  upper: number,
  loadings: readonly number[],
  df: number,
): number {
  const single = tQuantile(1 - upper, df)
  if (loadings.length <= 1) return single
  const names = loadings.map(rounded).toSorted((a, b) => a - b)
  const key = `${upper} ${df} ${names.join(' ')}`
  const known = quantiles.get(key)
  if (known !== undefined) return known
  const tail = tailOf(names)
  const high = tQuantile(1 - upper / loadings.length, df)
  const missBy = (logT: number) => Math.log(upper / tail(Math.exp(logT), df))
  const found = Math.exp(
    findRoot(missBy, Math.log(single * (1 - 1e-9)), Math.log(high * (1 + 1e-9)), 1e-12),
  )
  if (quantiles.size > 2000) quantiles.clear()
  quantiles.set(key, found)
  return found
}

/**
 * The loadings of k comparisons between levels of equal rows: every pair of them correlates by ½.
 *
 * @example evenLoadings(2).map((each) => each ** 2) // [0.5, 0.5] (equal numbers correlate by a half)
 */
export function evenLoadings(comparisons: number): number[] {
  return Array.from({ length: comparisons }, () => Math.SQRT1_2)
}

function tailOf(loadings: readonly number[]): (q: number, df: number) => number {
  const key = loadings.join(' ')
  const known = tails.get(key)
  if (known) return known
  const logUpper = chebyshevPanels((w) => Math.log(highestOfNormalsUpper(w, loadings)), farthest)
  const tail = overEstimatedSpread((w) => (w > farthest ? 0 : Math.exp(logUpper(w))), 0.5)
  if (tails.size > 200) tails.clear()
  tails.set(key, tail)
  return tail
}

/** Rounding in the last digits does not matter. */
function rounded(loading: number): number {
  return Math.round(loading * 1e13) / 1e13
}
