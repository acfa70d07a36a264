import { fQuantile } from '@/core/statistics/distributions/f.ts'
import { noncentralFTails } from '@/core/statistics/distributions/noncentral-f.ts'
import { noncentralTTails } from '@/core/statistics/distributions/noncentral-t.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'

/**
 * Chance that an F test at `alpha` finds true differences of the given noncentrality: Σ(true effect)²·rows each / σ².
 * For t levels scored by J tasters with effect size f (spread of the true means over σ) it is J·t·f².
 */
export function fTestPower(df1: number, df2: number, noncentrality: number, alpha = 0.05): number {
  return noncentralFTails(fQuantile(1 - alpha, df1, df2), df1, df2, noncentrality).upper
}

/**
 * Chance that a t test finds a true difference of `noncentrality` standard errors: two-sided counting both tails,
 * or counting only the tail of the true direction (`oneTail`, the convention of R's power.t.test unless strict).
 */
export function tTestPower(
  df: number,
  noncentrality: number,
  alpha = 0.05,
  tails: 'both' | 'oneTail' = 'both',
): number {
  return powerBeyond(tHalfWidth(1 - alpha, df), df, noncentrality, tails)
}

/** Chance that |t| passes a critical value when the true difference is so many standard errors. */
export function powerBeyond(
  critical: number,
  df: number,
  noncentrality: number,
  tails: 'both' | 'oneTail' = 'both',
): number {
  const right = noncentralTTails(critical, df, noncentrality).upper
  if (tails === 'oneTail') return right
  return right + noncentralTTails(-critical, df, noncentrality).lower
}
