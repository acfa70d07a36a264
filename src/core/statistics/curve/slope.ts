import { tHalfWidth, tTwoSidedP } from '@/core/statistics/distributions/students-t.ts'
import type { PolynomialFit } from './polynomial-fit.ts'

export type Slope = { slope: number; se: number; low: number; high: number; p: number; df: number }

/**
 * Which way, and how steeply for each unit of the level: the slope of a fitted line with its plain t interval and two-sided p.
 *
 * @example slopeOf(line) // {"slope": 2, "se": 0.5774, "df": 3} (the worked table, by hand: √(4/3)/2)
 */
export function slopeOf(fit: PolynomialFit, confidence = 0.95): Slope {
  const slope = fit.raw.coefficients[1] as number
  const se = fit.raw.se[1] as number
  const { df } = fit.residual
  const half = tHalfWidth(confidence, df) * se
  return { slope, se, low: slope - half, high: slope + half, p: tTwoSidedP(slope / se, df), df }
}
