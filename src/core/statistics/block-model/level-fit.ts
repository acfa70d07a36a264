import { fTails } from '@/core/statistics/distributions/f.ts'
import {
  type BlockedFit,
  blockedLeastSquares,
} from '@/core/statistics/least-squares/blocked-least-squares.ts'
import { indicator } from '@/core/statistics/least-squares/indicator.ts'
import { type Residual, residualOf } from '@/core/statistics/least-squares/residual.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import { type Cells, gatherCells } from './cells.ts'
import { covariateCells } from './covariate-cells.ts'
import type { LevelRows } from './rows.ts'

/**
 * A fit of y ~ block + covariates + factor(level): F of the level after everything else (type II), with what its means,
 * pairs and comparisons need. In `fit` values count from `origin`, the covariates' columns stand first, then one indicator for each level but the first.
 */
export type LevelFit = {
  f: number
  df1: number
  df2: number
  p: number
  residualSd: number
  levelCount: number
  blockCount: number
  rowCount: number
  residual: Residual
  covariateMeans: number[]
  origin: number
  fit: BlockedFit
}

/**
 * Does the level matter, once the blocks are allowed for? Least squares of y ~ block + factor(level), unequal numbers and
 * missing cells included; F is type II (level after blocks), its p the upper tail of F.
 *
 * Refuses: `no-rows`, `one-level`, `level-without-rows`, `levels-not-connected` (no chain of blocks compares all levels),
 * and what `residualOf` refuses. One block is a one-way analysis of variance.
 *
 * @example fitLevels(rows) // {"ok": true, "f": 4, "df1": 2, "df2": 2, "residualSd": 1.4142} (the worked table, by hand)
 */
export function fitLevels(rows: LevelRows): Answer<LevelFit> {
  return fitLevelCells(gatherCells(rows))
}

/**
 * The same from cells that are gathered already, so that several models of one response gather once.
 *
 * @example fitLevelCells(gatherCells(rows)) // {"ok": true, "f": 4, "df1": 2, "df2": 2, "residualSd": 1.4142} (the worked table, by hand)
 */
export function fitLevelCells(cells: Cells): Answer<LevelFit> {
  return fitLevelColumns(cells, [], [])
}

/** The same with covariates allowed for: y ~ block + covariates + factor(level), one list of values for each covariate; `gathered` are the rows' cells where they are known. */
export function fitLevelsWithCovariates(
  rows: LevelRows,
  covariates: readonly ArrayLike<number>[],
  gathered = gatherCells(rows),
): Answer<LevelFit> {
  const { cells, columns, inside } = covariateCells(rows, gathered, covariates)
  const centred = columns.map((column) => {
    const centre = weightedMean(column, cells.weight)
    return column.map((value) => value - centre)
  })
  return fitLevelColumns(cells, centred, inside)
}

function fitLevelColumns(
  cells: Cells,
  covariates: readonly Float64Array[],
  inside: readonly (readonly number[])[],
): Answer<LevelFit> {
  const { levelCount, level } = cells
  if (cells.rowCount === 0) return refuse('no-rows')
  if (levelCount < 2) return refuse('one-level')
  const present = new Set(level)
  if (present.size < levelCount) return refuse('level-without-rows')
  const indicators = Array.from({ length: levelCount - 1 }, (_, j) => indicator(level, j + 1))
  const within = inside.map((row) => [
    ...row.slice(0, -1),
    ...indicators.map(() => 0),
    row.at(-1) as number,
  ])
  const result = blockedLeastSquares(cells, [...covariates, ...indicators], within)
  if (!result.ok) {
    const alone = blockedLeastSquares(cells, indicators)
    return refuse(alone.ok ? 'covariate-not-separable' : 'levels-not-connected')
  }
  const { fit } = result
  const q = covariates.length
  const df1 = levelCount - 1
  const df2 = cells.rowCount - fit.blockCount - df1 - q
  const left = fit.residualSumOfSquares + cells.insideSumOfSquares
  const checked = residualOf(left, df2, cells.lowest, cells.highest)
  if (!checked.ok) return checked
  const explained = fit.sequential.slice(q).reduce((sum, value) => sum + value, 0)
  const f = explained / df1 / (left / df2)
  return {
    ok: true,
    f,
    df1,
    df2,
    p: fTails(f, df1, df2).upper,
    residualSd: checked.residual.sd,
    levelCount,
    blockCount: fit.blockCount,
    rowCount: cells.rowCount,
    residual: checked.residual,
    covariateMeans: covariates.map((column) => weightedMean(column, cells.weight)),
    origin: cells.origin,
    fit,
  }
}

function weightedMean(column: Float64Array, weight: Float64Array): number {
  const total = weight.reduce((sum, value) => sum + value, 0)
  return column.reduce((sum, value, i) => sum + value * (weight[i] as number), 0) / total
}
