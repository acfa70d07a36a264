import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { type PolynomialFit, quadraticForm } from './polynomial-fit.ts'

export type CurvePoint = { level: number; estimate: number; se: number; low: number; high: number }

/**
 * The fitted line or curve at some levels, with the plain t interval of its height: the band of a chart, point by point.
 *
 * @example curveAt(line, [0, 2]) // [{"estimate": 2}, {"estimate": 6}] (the worked table lies on 2 + 2L)
 */
export function curveAt(
  fit: PolynomialFit,
  levels: readonly number[],
  confidence = 0.95,
): CurvePoint[] {
  const factor = tHalfWidth(confidence, fit.residual.df)
  return levels.map((level) => {
    const x = (level - fit.centre) / fit.scale
    const powers = [1, x, x * x].slice(0, fit.degree + 1)
    const estimate = powers.reduce(
      (sum, power, i) => sum + power * (fit.coefficients[i] as number),
      0,
    )
    const se = Math.sqrt(quadraticForm(powers, fit.covariance))
    return { level, estimate, se, low: estimate - factor * se, high: estimate + factor * se }
  })
}
