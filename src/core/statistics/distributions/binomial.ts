import betainc from '@stdlib/math-base-special-betainc'
import stdlibPmf from '@stdlib/stats-base-dists-binomial-pmf'
import stdlibQuantile from '@stdlib/stats-base-dists-binomial-quantile'

/** Chance of exactly k successes in n tries with chance p each. */
export function binomialMass(k: number, n: number, p: number): number {
  return stdlibPmf(k, n, p)
}

/** Chance of k successes or fewer in n tries: I_{1−p}(n − k, k + 1). */
export function binomialAtMost(k: number, n: number, p: number): number {
  if (k < 0) return 0
  if (k >= n) return 1
  return betainc(p, k + 1, n - k, true, true)
}

/** Chance of k successes or more in n tries: I_p(k, n − k + 1). */
export function binomialAtLeast(k: number, n: number, p: number): number {
  if (k <= 0) return 1
  if (k > n) return 0
  return betainc(p, k, n - k + 1, true, false)
}

/** The smallest count whose chance of not being exceeded is at least the share asked for. */
export function binomialQuantile(share: number, n: number, p: number): number {
  return stdlibQuantile(share, n, p)
}
