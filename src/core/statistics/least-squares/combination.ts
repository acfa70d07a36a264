import type { BlockedFit } from './blocked-least-squares.ts'

/** An estimate with its variance as a multiple of the residual variance. */
export type Combination = { estimate: number; unscaledVariance: number }

/**
 * The fitted value at given columns for the average block, every block counting the same whatever its rows
 * (the convention of equally weighted marginal means), with its variance.
 *
 * The block part (1/B)Σ ȳ_b is independent of the coefficients, so the variance is Σ 1/w_b / B² + vᵀCv,
 * with v the columns less their average over blocks.
 */
export function averageBlockValue(fit: BlockedFit, columns: readonly number[]): Combination {
  let estimate = 0
  let unscaledVariance = 0
  for (let b = 0; b < fit.blockWeights.length; b += 1) {
    const weight = fit.blockWeights[b] as number
    if (weight === 0) continue
    estimate += (fit.blockMeans[b] as number) / fit.blockCount
    unscaledVariance += 1 / weight / fit.blockCount ** 2
  }
  const offsets = columns.map(
    (value, j) => value - averageOverBlocks(fit, fit.columnBlockMeans[j] as Float64Array),
  )
  const rest = columnsValue(fit, offsets)
  return {
    estimate: estimate + rest.estimate,
    unscaledVariance: unscaledVariance + rest.unscaledVariance,
  }
}

/** A combination of the fitted coefficients, with its variance. */
export function columnsValue(fit: BlockedFit, weights: readonly number[]): Combination {
  let estimate = 0
  let unscaledVariance = 0
  for (const [i, weight] of weights.entries()) {
    if (weight === 0) continue
    estimate += weight * (fit.coefficients[i] as number)
    for (const [j, other] of weights.entries()) {
      unscaledVariance += weight * other * (fit.unscaled[i]?.[j] as number)
    }
  }
  return { estimate, unscaledVariance }
}

/** A column's block means, averaged with every block counting the same. */
function averageOverBlocks(fit: BlockedFit, blockMeans: Float64Array): number {
  let sum = 0
  for (let b = 0; b < blockMeans.length; b += 1) {
    if ((fit.blockWeights[b] as number) > 0) sum += blockMeans[b] as number
  }
  return sum / fit.blockCount
}
