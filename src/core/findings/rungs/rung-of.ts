import { bestOf } from '@/core/findings/best/best-of.ts'
import { type Absent, absent, isPresent } from '@/core/findings/reason.ts'
import { type LevelsPresent, levelsPresent } from '@/core/findings/table/levels-present.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { PairOfLevels } from '@/core/statistics/block-model/all-pairs.ts'
import { type Cells, gatherCells } from '@/core/statistics/block-model/cells.ts'
import { fitLevelCells, type LevelFit } from '@/core/statistics/block-model/level-fit.ts'
import { levelMeans } from '@/core/statistics/block-model/level-means.ts'
import type { LevelRows } from '@/core/statistics/block-model/rows.ts'
import { pairsByOwnError, unequalSpread } from '@/core/statistics/block-model/unequal-spread.ts'
import type { Better } from '@/core/trial/response.ts'
import { comparisonsOfFit } from './comparisons-of-fit.ts'
import type { LevelId, Mean, Rung, Trend } from './rung-shape.ts'
import { trendOf } from './trend-of.ts'

/** What a rung compares: values with the block each stands in and its level, an index into the table's levels. */
export interface RungRows {
  y: ArrayLike<number>
  block: ArrayLike<number>
  level: ArrayLike<number>
  /** The level as handled of each value; NaN where it was not logged. */
  handled: ArrayLike<number>
}

/** Rows of the levels present with their cells and the fit of these. */
export interface RungFit {
  present: LevelsPresent
  rows: LevelRows
  cells: Cells
  fit: LevelFit
}

/** A rung with the fit behind it, for what is computed from it further on. */
export interface FittedRung extends RungFit {
  rung: Rung
  /** All pairs by the levels' numbers among those present. */
  pairs: PairOfLevels[]
}

/** What a rung knows better than its model: the slope with its own error, how unlike the errors of its pairs are, and each pair's own where levels scatter unequally. */
export interface OwnErrors {
  trend: (present: LevelsPresent) => Trend | Absent
  pairVariances: (present: LevelsPresent) => readonly (readonly number[])[] | null
}

/** The check is slow to call a spread unequal (2 in 100 at 0.05 where all is equal), so it is asked at 0.1. */
const unequalBelow = 0.1

/**
 * One rung: y ~ block + factor(level) with F (type II), marginal means, all pairs, comparisons against the control, the
 * trend over L, and the best from L and L^2. Levels without a value are left out. Gives the reason when the model cannot be fitted.
 */
export function rungOf(
  scores: ScoreTable,
  data: RungRows,
  better: Better,
  own?: OwnErrors,
): FittedRung | Absent {
  const fitted = fitOfRung(scores, data)
  if (!isPresent(fitted)) return fitted
  const { present, rows, cells, fit } = fitted
  const spread = unequalSpread(rows, fit)
  const unequal = spread !== null && spread.p < unequalBelow ? spread : null
  const compared = comparisonsOfFit(fit, present.control, own?.pairVariances(present) ?? null)
  const name = (level: number) => present.levels[level]?.id as LevelId
  const pairs = unequal && own ? pairsByOwnError(rows, compared.pairs) : compared.pairs
  const ordered = scores.factor.ordered
  const trend = ordered ? (own?.trend(present) ?? trendOf(cells, present)) : absent('choice-factor')
  const rung: Rung = {
    f: fit.f,
    df1: fit.df1,
    df2: fit.df2,
    p: fit.p,
    residualSd: fit.residualSd,
    means: meansOf(fit, name),
    pairs: pairs.map((pair) => ({ ...pair, a: name(pair.a), b: name(pair.b) })),
    againstControl:
      compared.control?.map((each) => ({
        ...each,
        level: name(each.level),
        method: each.method === 'dunnett' ? ('exact' as const) : ('approximate' as const),
      })) ?? absent('no-control'),
    trend,
    best: ordered
      ? bestOf({ rows, cells, fit, present, handled: data.handled, trend, better })
      : absent('choice-factor'),
    ...(unequal && {
      unequalSpread: {
        ...{ p: unequal.p, widest: name(unequal.widest), calmest: name(unequal.calmest) },
        pairs: own ? ('own-error' as const) : ('one-error' as const),
      },
    }),
  }
  return { ...fitted, rung, pairs }
}

/** The fit of a rung's rows with the cells it stands on, nothing compared yet; the reason where it cannot be fitted. */
export function fitOfRung(scores: ScoreTable, data: Omit<RungRows, 'handled'>): RungFit | Absent {
  const present = levelsPresent(scores, data.level)
  const rows = levelRows(data, present)
  const cells = gatherCells(rows)
  const fit = fitLevelCells(cells)
  return fit.ok ? { present, rows, cells, fit } : absent(fit.reason)
}

/** Marginal means of a fit under the levels' names. */
export function meansOf(fit: LevelFit, name: (level: number) => LevelId): Mean[] {
  return levelMeans(fit).map((mean) => ({ ...mean, level: name(mean.level) }))
}

/** Rows for the block model, blocks renumbered without gaps. */
export function levelRows(data: Pick<RungRows, 'y' | 'block'>, present: LevelsPresent): LevelRows {
  const block = new Int32Array(data.block.length)
  const codes: number[] = []
  let blocks = 0
  for (let row = 0; row < block.length; row += 1) {
    const key = data.block[row] as number
    codes[key] ??= blocks++
    block[row] = codes[key]
  }
  return {
    y: data.y,
    block,
    level: present.level,
    blockCount: Math.max(1, blocks),
    levelCount: present.levels.length,
  }
}
