import { dunnettUpper, dunnettUpperQuantile } from '@/core/statistics/distributions/dunnett.ts'
import { nearestProductForm } from '@/core/statistics/distributions/product-correlation.ts'
import { type ComparedLevels, levelDifference, unscaledCovariance } from './level-difference.ts'

/** `dunnett` is exact for the fitted correlations; `dunnett-approximate` used the nearest product form instead. */
export type ControlMethod = 'dunnett' | 'dunnett-approximate'

export type AgainstControl = {
  level: number
  difference: number
  se: number
  low: number
  high: number
  p: number
  method: ControlMethod
}

/**
 * Every other level against the control, difference = mean(level) − mean(control), by Dunnett's two-sided comparison
 * (Dunnett 1955, J Am Stat Assoc 50:1096; from memory), with the correlations of the fitted covariance.
 * Where these are not products λ_i·λ_j to 1e-6, the nearest such form is used and the method says *approximate*.
 *
 * @example againstControl(fit, 0) // [{"level": 1, "difference": 2}, {"level": 2, "difference": 4}] (the worked table, by hand)
 */
export function againstControl(
  fit: ComparedLevels,
  control: number,
  confidence = 0.95,
): AgainstControl[] {
  const { compared, loadings, largestGap } = controlLoadings(fit, control)
  const method = largestGap < 1e-6 ? 'dunnett' : 'dunnett-approximate'
  const factor = dunnettUpperQuantile(1 - confidence, loadings, fit.df2)
  return compared.map(({ level, difference, se }) => ({
    level,
    difference,
    se,
    low: difference - factor * se,
    high: difference + factor * se,
    p: dunnettUpper(difference / se, loadings, fit.df2),
    method,
  }))
}

/**
 * The comparisons of every other level with a control: differences with their errors, and the loadings λ of the correlations
 * between them, exact where the gap is 0, else the nearest product form.
 *
 * @example controlLoadings(fit, 0).loadings // [0.7071, 0.7071] (equal numbers: correlation 1/2)
 */
export function controlLoadings(fit: ComparedLevels, control: number) {
  const others = Array.from({ length: fit.levelCount }, (_, i) => i).filter((i) => i !== control)
  const compared = others.map((level) => ({ level, ...levelDifference(fit, control, level) }))
  const correlation = compared.map((one) =>
    compared.map((other) => {
      const shared =
        unscaledCovariance(fit, one.level, other.level) -
        unscaledCovariance(fit, one.level, control) -
        unscaledCovariance(fit, other.level, control) +
        unscaledCovariance(fit, control, control)
      return shared / Math.sqrt(one.unscaledVariance * other.unscaledVariance)
    }),
  )
  return { compared, ...nearestProductForm(correlation) }
}
