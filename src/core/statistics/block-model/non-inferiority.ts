import { tHalfWidth, tTails } from '@/core/statistics/distributions/students-t.ts'

export type NonInferiority = { lowerLimit: number; halfWidth: number; p: number; passes: boolean }

/**
 * Is a level as good as another within a margin? One-sided: the lower limit of the difference (level less the other, higher
 * being better) must lie above −margin. `p` is that of the hypothesis that the difference is at most −margin.
 * If `halfWidth` is not below the margin, nothing short of a better level could pass.
 */
export function nonInferiority(
  difference: number,
  se: number,
  df: number,
  margin: number,
  confidence = 0.95,
): NonInferiority {
  const halfWidth = tHalfWidth(2 * confidence - 1, df) * se
  const lowerLimit = difference - halfWidth
  const p = tTails((difference + margin) / se, df).upper
  return { lowerLimit, halfWidth, p, passes: lowerLimit > -margin }
}
