import { tTwoSidedP } from '@/core/statistics/distributions/students-t.ts'
import type { Answer } from '@/core/statistics/reason.ts'
import { type Cells, gatherCells } from './cells.ts'
import { levelDifference } from './level-difference.ts'
import { fitLevelCells, fitLevelsWithCovariates, type LevelFit } from './level-fit.ts'
import type { LevelRows } from './rows.ts'

/**
 * A comparison of levels at equal covariate. `slope`, `slopeSe`, `slopeP` are of the covariate; `levels` is the fit whose F,
 * means (at the average covariate) and pairs allow for it; `widening` says what that allowance costs.
 */
export type WithCovariate = {
  slope: number
  slopeSe: number
  slopeP: number
  widening: number
  levels: LevelFit
}

/**
 * Was it freshness, or order? Least squares of y ~ block + covariate + factor(level), for instance the minutes since the
 * oven: the covariate's slope, the levels compared at equal covariate (type II), and the widening: the largest over pairs of
 * √(variance of the difference with the covariate / without it) at the same residual spread. A widening beyond 3 says that
 * covariate and level cannot be told apart.
 *
 * Refuses `covariate-not-separable` when the covariate is constant within blocks or follows the levels exactly, and what
 * `fitLevels` refuses. `known` are the rows' cells with their fit without the covariate, where they are worked out already.
 *
 * @example compareWithCovariate(rows, [1, -1, 0, -1, 1, 0]) // {"ok": true, "slope": 0.5, "widening": 1} (the worked table, by hand: 2/4)
 */
export function compareWithCovariate(
  rows: LevelRows,
  covariate: ArrayLike<number>,
  known?: { cells: Cells; fit: LevelFit },
): Answer<WithCovariate> {
  const cells = known?.cells ?? gatherCells(rows)
  const fitted = fitLevelsWithCovariates(rows, [covariate], cells)
  if (!fitted.ok) return fitted
  const plain = known ? { ok: true as const, ...known.fit } : fitLevelCells(cells)
  if (!plain.ok) return plain
  const slope = fitted.fit.coefficients[0] as number
  const slopeSe = fitted.residualSd * Math.sqrt(fitted.fit.unscaled[0]?.[0] as number)
  let widening = 1
  for (let a = 0; a < rows.levelCount; a += 1) {
    for (let b = a + 1; b < rows.levelCount; b += 1) {
      const wider = levelDifference(fitted, a, b).unscaledVariance
      widening = Math.max(
        widening,
        Math.sqrt(wider / levelDifference(plain, a, b).unscaledVariance),
      )
    }
  }
  const { ok: _, ...levels } = fitted
  return {
    ok: true,
    slope,
    slopeSe,
    slopeP: tTwoSidedP(slope / slopeSe, fitted.df2),
    widening,
    levels,
  }
}
