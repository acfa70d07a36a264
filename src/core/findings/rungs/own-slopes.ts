import { type Absent, absent } from '@/core/findings/reason.ts'
import type { LevelsPresent } from '@/core/findings/table/levels-present.ts'
import { lineWeights } from '@/core/statistics/block-model/level-contrast.ts'
import { tHalfWidth, tTwoSidedP } from '@/core/statistics/distributions/students-t.ts'
import type { Trend } from './rung-shape.ts'
import type { TasterMeans } from './taster-means.ts'
import { levelValues } from './trend-of.ts'

/**
 * Which way, over people: the mean of the tasters' own slopes (each a straight line through that taster's level means), its error from
 * how these differ. Tasters differ in how steeply they take a factor, and a model with one slope for all counts that as if
 * it were chance of single scores. Tasters with fewer than two levels have no slope. Two tasters at least.
 */
export function ownSlopes(means: TasterMeans, present: LevelsPresent): Trend | Absent {
  const values = levelValues(present)
  const slopes = means.flatMap((row) => {
    const had = present.index.flatMap((level, at) => {
      const mean = row[level]
      return typeof mean === 'number' ? [{ value: values[at] as number, mean }] : []
    })
    if (had.length < 2) return []
    const weights = lineWeights(had.map(({ value }) => value))
    return [had.reduce((sum, { mean }, at) => sum + mean * (weights[at] as number), 0)]
  })
  const n = slopes.length
  if (n < 2) return absent('no-residual-df')
  const slope = slopes.reduce((sum, one) => sum + one / n, 0)
  const variance = slopes.reduce((sum, one) => sum + (one - slope) ** 2, 0) / (n - 1)
  const se = Math.sqrt(variance / n)
  if (!(se > 1e-12 * Math.max(1e-300, ...slopes.map(Math.abs))))
    return absent('no-residual-variance')
  const half = tHalfWidth(0.95, n - 1) * se
  return { slope, se, low: slope - half, high: slope + half, p: tTwoSidedP(slope / se, n - 1) }
}
