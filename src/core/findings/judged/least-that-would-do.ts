import { tQuantile } from '@/core/statistics/distributions/students-t.ts'

const most = 10_000

/**
 * How many tasters (sessions, flights) would bring the one-sided 95 % half-width below the margin, when a difference has
 * standard error `se` with `count` of them: the error falls with the root of the number and t follows its own degrees of
 * freedom, (number - 1) x df1. Null when ten thousand would not do.
 */
export function leastThatWouldDo(
  se: number,
  margin: number,
  count: number,
  df1: number,
): number | null {
  const halfWidth = (n: number) => tQuantile(0.95, (n - 1) * df1) * se * Math.sqrt(count / n)
  if (!(halfWidth(most) < margin)) return null
  let [low, high] = [Math.max(1, count), most]
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (halfWidth(middle) < margin) high = middle
    else low = middle
  }
  return high
}
