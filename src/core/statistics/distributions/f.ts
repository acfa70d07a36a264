import betainc from '@stdlib/math-base-special-betainc'
import stdlibQuantile from '@stdlib/stats-base-dists-f-quantile'
import { findRoot } from '@/core/statistics/roots/find-root.ts'
import type { Tails } from './tails.ts'

/**
 * Both tails of the F distribution, through the regularized incomplete beta function:
 * lower = I_y(df1/2, df2/2) with y = df1·F/(df1·F + df2), upper its complement, computed as such.
 *
 * @example fTails(1, 3, 3) // {"lower": 0.5, "upper": 0.5} (by symmetry)
 */
export function fTails(f: number, df1: number, df2: number): Tails {
  if (f <= 0) return { lower: 0, upper: 1 }
  if (f === Infinity) return { lower: 1, upper: 0 }
  const scaled = df1 * f
  const whole = scaled + df2
  // The smaller of y and 1 − y is formed directly, so that neither cancels.
  if (scaled <= df2) {
    const y = scaled / whole
    return {
      lower: betainc(y, df1 / 2, df2 / 2, true, false),
      upper: betainc(y, df1 / 2, df2 / 2, true, true),
    }
  }
  const y = df2 / whole
  return {
    lower: betainc(y, df2 / 2, df1 / 2, true, true),
    upper: betainc(y, df2 / 2, df1 / 2, true, false),
  }
}

/**
 * The F with a share p below it. The package's value is a start only (it answers NaN at some points and loses digits
 * at others): Brent's method on the logarithm of F settles it against the smaller tail.
 */
export function fQuantile(p: number, df1: number, df2: number): number {
  if (!(p > 0 && p < 1)) return p === 0 ? 0 : p === 1 ? Infinity : Number.NaN
  const missBy = (logF: number) => {
    const tails = fTails(Math.exp(logF), df1, df2)
    return p < 0.5 ? Math.log(tails.lower / p) : Math.log((1 - p) / tails.upper)
  }
  const guess = stdlibQuantile(p, df1, df2)
  const start = guess > 0 && guess < Infinity ? Math.log(guess) : 0
  let [low, high] = [start - 1e-6, start + 1e-6]
  for (let reach = 1e-5; missBy(low) > 0; reach *= 4) low -= reach
  for (let reach = 1e-5; missBy(high) < 0; reach *= 4) high += reach
  return Math.exp(findRoot(missBy, low, high))
}
