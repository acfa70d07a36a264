import { type ComparedLevels, levelDifference, unscaledCovariance } from './level-difference.ts'

/** A weighted sum of level means, weights adding to zero: estimate, standard error, t and the fit's degrees of freedom. */
export type LevelContrast = { estimate: number; se: number; t: number; df: number }

/**
 * A contrast of the level means of a fit with the fit's own error, so that lack of fit of a line or curve never enters.
 *
 * @example levelContrast(fit, lineWeights([0, 1, 2])) // {"estimate": 2, "se": 0.7071, "df": 2} (the worked table, by hand: √2·√(0.5/2))
 */
export function levelContrast(fit: ComparedLevels, weights: readonly number[]): LevelContrast {
  let estimate = 0
  let variance = 0
  for (let i = 1; i < fit.levelCount; i += 1) {
    const weight = weights[i] as number
    estimate += weight * levelDifference(fit, 0, i).difference
    for (let j = 1; j < fit.levelCount; j += 1)
      variance += weight * (weights[j] as number) * unscaledCovariance(fit, i, j)
  }
  const se = fit.residualSd * Math.sqrt(Math.max(0, variance))
  return { estimate, se, t: estimate / se, df: fit.df2 }
}

/**
 * Weights of the straight line through levels at these values, scaled so that the contrast is the rise for one unit.
 *
 * @example lineWeights([60, 70, 80]) // [-0.05, 0, 0.05] (by hand: 10/200)
 */
export function lineWeights(values: readonly number[]): number[] {
  const mean = values.reduce((sum, value) => sum + value / values.length, 0)
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  return values.map((value) => (value - mean) / squares)
}

/**
 * Weights of the bend: the square of the values freed from constant and line; negative when the middle stands high.
 *
 * @example bendWeights([60, 70, 80]).map((each, _, all) => each / (all[0] ?? 1)) // [1, -2, 1] (orthogonal polynomials of three)
 */
export function bendWeights(values: readonly number[]): number[] {
  const mean = values.reduce((sum, value) => sum + value / values.length, 0)
  const span = Math.max(...values) - Math.min(...values)
  const x = values.map((value) => (value - mean) / span)
  const line = lineWeights(x)
  const squares = x.map((value) => value * value)
  const level = squares.reduce((sum, value) => sum + value / x.length, 0)
  const slope = squares.reduce((sum, value, at) => sum + value * (line[at] as number), 0)
  const bend = squares.map((value, at) => value - level - slope * (x[at] as number))
  const length = bend.reduce((sum, value) => sum + value * value, 0)
  return bend.map((value) => value / length)
}
