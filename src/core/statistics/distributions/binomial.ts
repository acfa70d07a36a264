import betainc from '@stdlib/math-base-special-betainc'
import stdlibQuantile from '@stdlib/stats-base-dists-binomial-quantile'

/**
 * Chance of k successes or more in n tries: I_p(k, n − k + 1).
 *
 * @example binomialAtLeast(2, 2, 0.5) // 0.25 (two heads in two throws)
 */
export function binomialAtLeast(k: number, n: number, p: number): number {
  if (k <= 0) return 1
  if (k > n) return 0
  return betainc(p, k, n - k + 1, true, false)
}

/** The smallest count whose chance of not being exceeded is at least the share asked for. */
export function binomialQuantile(share: number, n: number, p: number): number {
  return stdlibQuantile(share, n, p)
}
