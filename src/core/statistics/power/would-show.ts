import { studentizedRangeUpperQuantile } from '@/core/statistics/distributions/studentized-range.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { findRoot } from '@/core/statistics/roots/find-root.ts'
import { powerBeyond } from './test-power.ts'

/** What a planned comparison of all pairs can do, in the response's own unit. */
export type WouldShow = { halfWidth: number; wouldShow: number }

/**
 * Before anything is mixed: the half-width of Tukey's interval for any pair, and the true difference of one pair that Tukey
 * finds with the wanted power. `levelVariance` is the variance of one level's mean as compared (so that the standard error of
 * a difference is √(2·variance)), `df` the degrees of freedom of its error.
 *
 * @example tukeyWouldShow(0.5, 2, 100000) // {"halfWidth": 1.96, "wouldShow": 2.8} (two levels: the normal, 1.960 + 0.842)
 */
export function tukeyWouldShow(
  levelVariance: number,
  levelCount: number,
  df: number,
  power = 0.8,
  alpha = 0.05,
): WouldShow {
  const se = Math.sqrt(2 * levelVariance)
  const critical = studentizedRangeUpperQuantile(alpha, levelCount, df) / Math.SQRT2
  const missing = (size: number) => powerBeyond(critical, df, size) - power
  let high = critical + 3
  while (missing(high) < 0) high *= 1.5
  return { halfWidth: critical * se, wouldShow: findRoot(missing, 0, high, 1e-10) * se }
}

/**
 * Chance that Tukey's comparison finds a pair that truly differs by so much.
 *
 * @example tukeyPower(0, 1, 2, 100000) // 0.050 (no difference: its error)
 */
export function tukeyPower(
  difference: number,
  levelVariance: number,
  levelCount: number,
  df: number,
  alpha = 0.05,
): number {
  const critical = studentizedRangeUpperQuantile(alpha, levelCount, df) / Math.SQRT2
  return powerBeyond(critical, df, Math.abs(difference) / Math.sqrt(2 * levelVariance))
}

/**
 * Half-width of the interval of a fitted slope times the whole range of levels: how surely the way from the first to the last
 * level will be known. `levelValues` each with the same variance of its mean.
 *
 * @example slopeHalfWidth(1, [0, 1, 2], 100000) // 2.77 (1.960·2/√2)
 */
export function slopeHalfWidth(
  levelVariance: number,
  levelValues: readonly number[],
  df: number,
  confidence = 0.95,
): number {
  const mean = levelValues.reduce((sum, value) => sum + value / levelValues.length, 0)
  const squares = levelValues.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  const range = Math.max(...levelValues) - Math.min(...levelValues)
  return tHalfWidth(confidence, df) * Math.sqrt(levelVariance / squares) * range
}
