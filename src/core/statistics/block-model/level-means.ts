import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { averageBlockValue } from '@/core/statistics/least-squares/combination.ts'
import type { LevelFit } from './level-fit.ts'

export type LevelMean = { level: number; estimate: number; se: number; low: number; high: number }

/**
 * Marginal mean of every level: what the average block would give it, every block counting the same, at the average of any
 * covariate over the rows. Limits are plain t with the fit's residual degrees of freedom (the convention of R's emmeans).
 *
 * @example levelMeans(fit) // [{"estimate": 2, "se": 1}, {"estimate": 4, "se": 1}, {"estimate": 6, "se": 1}] (the worked table, by hand: √2/√2)
 */
export function levelMeans(fit: LevelFit, confidence = 0.95): LevelMean[] {
  const factor = tHalfWidth(confidence, fit.df2)
  return Array.from({ length: fit.levelCount }, (_, level) => {
    const columns = [...fit.covariateMeans, ...levelColumns(fit.levelCount, level)]
    const average = averageBlockValue(fit.fit, columns)
    const estimate = fit.origin + average.estimate
    const se = fit.residualSd * Math.sqrt(average.unscaledVariance)
    return { level, estimate, se, low: estimate - factor * se, high: estimate + factor * se }
  })
}

function levelColumns(levelCount: number, level: number): number[] {
  return Array.from({ length: levelCount - 1 }, (_, j) => (j + 1 === level ? 1 : 0))
}
