import { fQuantile } from '@/core/statistics/distributions/f.ts'
import { noncentralFTails } from '@/core/statistics/distributions/noncentral-f.ts'
import { noncentralTTails } from '@/core/statistics/distributions/noncentral-t.ts'

/**
 * Chance that an F test at `alpha` finds true differences of the given noncentrality: Σ(true effect)²·rows each / σ².
 * For t levels scored by J tasters with effect size f (spread of the true means over σ) it is J·t·f².
 *
 * @example fTestPower(3, 43.70452, 11.92613) // 0.8000 (R's own example of power.anova.test: 4 groups, 11.926 each)
 */
export function fTestPower(df1: number, df2: number, noncentrality: number, alpha = 0.05): number {
  return noncentralFTails(fQuantile(1 - alpha, df1, df2), df1, df2, noncentrality).upper
}

/**
 * Chance that |t| passes a critical value, to either side, when the true difference is so many standard errors.
 *
 * @example powerBeyond(1.95996, 100000, 0) // 0.0500 (both tails)
 */
export function powerBeyond(critical: number, df: number, noncentrality: number): number {
  return (
    noncentralTTails(critical, df, noncentrality).upper +
    noncentralTTails(-critical, df, noncentrality).lower
  )
}
