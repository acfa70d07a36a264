import { findRoot } from '@/core/statistics/roots/find-root.ts'
import { chebyshevPanels } from './chebyshev-panels.ts'
import { largestOfNormalsUpper } from './largest-of-normals.ts'
import { overEstimatedSpread } from './over-estimated-spread.ts'
import { tHalfWidth } from './students-t.ts'

/** Beyond it the tail, about exp(−w²/2), is smaller than any double. */
const farthest = 37
const tails = new Map<string, (q: number, df: number) => number>()
const quantiles = new Map<string, number>()

/**
 * Chance that the largest of several correlated t values, by size, reaches t: Dunnett's two-sided adjusted p.
 *
 * `loadings` are the λ of correlations λ_i·λ_j, one for each comparison (√½ each when all levels have equal rows);
 * `df` the degrees of freedom of the shared residual spread. The normal case is tabulated once for each set of loadings and
 * averaged over the estimated spread (see `largestOfNormalsUpper`, `overEstimatedSpread`).
 */
export function dunnettUpper(t: number, loadings: readonly number[], df: number): number {
  return t === 0 ? 1 : tailOf(loadings)(Math.abs(t), df)
}

/**
 * The t that is reached with chance `upper` by the largest of the comparisons: the factor of simultaneous limits.
 *
 * @example dunnettUpperQuantile(0.05, evenLoadings(1), 12) // 2.1788 (one comparison is a two-sided t)
 */
export function dunnettUpperQuantile(
  upper: number,
  loadings: readonly number[],
  df: number,
): number {
  const single = tHalfWidth(1 - upper, df)
  if (loadings.length === 1) return single
  const key = `${upper} ${df} ${keyOf(loadings)}`
  const known = quantiles.get(key)
  if (known !== undefined) return known
  const high = tHalfWidth(1 - upper / loadings.length, df)
  const missBy = (logT: number) => Math.log(upper / dunnettUpper(Math.exp(logT), loadings, df))
  const found = Math.exp(
    findRoot(missBy, Math.log(single * (1 - 1e-9)), Math.log(high * (1 + 1e-9)), 1e-12),
  )
  if (quantiles.size > 2000) quantiles.clear()
  quantiles.set(key, found)
  return found
}

function tailOf(loadings: readonly number[]): (q: number, df: number) => number {
  const key = keyOf(loadings)
  const known = tails.get(key)
  if (known) return known
  const sizes = loadings.map(sizeOf)
  const logUpper = chebyshevPanels((w) => Math.log(largestOfNormalsUpper(w, sizes)), farthest)
  const tail = overEstimatedSpread((w) => (w > farthest ? 0 : Math.exp(logUpper(w))), 0.5)
  if (tails.size > 200) tails.clear()
  tails.set(key, tail)
  return tail
}

/** The order of comparisons does not matter. */
function keyOf(loadings: readonly number[]): string {
  return loadings.map(sizeOf).sort().join(' ')
}

/** Neither sign nor rounding in the last digits matters, and equal ones can be worked out together. */
function sizeOf(loading: number): number {
  return Math.round(Math.abs(loading) * 1e13) / 1e13
}
