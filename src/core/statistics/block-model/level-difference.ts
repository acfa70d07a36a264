import type { BlockedFit } from '@/core/statistics/least-squares/blocked-least-squares.ts'
import type { LevelFit } from './level-fit.ts'

/** What of a fit the levels are compared by. */
export type ComparedLevels = Pick<
  LevelFit,
  'levelCount' | 'df2' | 'residualSd' | 'covariateMeans'
> & { fit: Pick<BlockedFit, 'coefficients' | 'unscaled'> }

export type LevelDifference = { difference: number; se: number; unscaledVariance: number }

/**
 * Mean of level b less mean of level a in a fit, with its standard error (and its variance over the residual variance).
 *
 * @example levelDifference(fit, 0, 2) // {"difference": 4, "se": 1.4142} (the worked table, by hand: √2·√(2/2))
 */
export function levelDifference(fit: ComparedLevels, a: number, b: number): LevelDifference {
  const difference = effectOf(fit, b) - effectOf(fit, a)
  const unscaledVariance =
    unscaledCovariance(fit, b, b) -
    2 * unscaledCovariance(fit, a, b) +
    unscaledCovariance(fit, a, a)
  return { difference, se: fit.residualSd * Math.sqrt(unscaledVariance), unscaledVariance }
}

/** Covariance, over the residual variance, of (level i − first level) and (level j − first level). */
export function unscaledCovariance(fit: ComparedLevels, i: number, j: number): number {
  if (i === 0 || j === 0) return 0
  const q = fit.covariateMeans.length
  return fit.fit.unscaled[q + i - 1]?.[q + j - 1] as number
}

function effectOf(fit: ComparedLevels, level: number): number {
  if (level === 0) return 0
  return fit.fit.coefficients[fit.covariateMeans.length + level - 1] as number
}
