import { type Absent, absent, isPresent } from '@/core/findings/reason.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { compareWithCovariate } from '@/core/statistics/block-model/with-covariate.ts'
import type { Better } from '@/core/trial/response.ts'
import type { Cells } from './cells.ts'
import {
  type FittedRung,
  fitOfRung,
  meansOf,
  type RungFit,
  type RungRows,
  rungOf,
} from './rung-of.ts'
import type { Beside, LevelId } from './rung-shape.ts'

/**
 * The flat model over all rows, score ~ taster + factor(level), as other programs compute it: it overstates, because the
 * pieces of one dough are not new doughs. One taster or none: score ~ factor(level). With it freshness and order:
 * the same with minutes since the oven, and with the position, beside the level.
 */
export function rowsRung(scores: ScoreTable, cells: Cells, better: Better): FittedRung | Absent {
  return rungOf(scores, flatRows(cells), better)
}

/** What the flat model compares: all rows. */
export function flatRows(cells: Cells): RungRows {
  const { y, level, handled } = cells
  return { y, block: tasterBlocks(cells), level, handled }
}

/** Freshness (`minutes`) or order (`position`) beside the level, over the rows where it was recorded; `all` is the fit of all rows. */
export function besideOf(
  scores: ScoreTable,
  cells: Cells,
  what: 'minutes' | 'position',
  all: RungFit,
): Beside | Absent {
  const values = cells[what]
  const missing = values.reduce((count, value) => count + (Number.isNaN(value) ? 1 : 0), 0)
  if (missing === values.length) return absent(what === 'minutes' ? 'no-minutes' : 'no-positions')
  const pick = (column: Float64Array | Int32Array): ArrayLike<number> =>
    column.filter((_, row) => !Number.isNaN(values[row]))
  const recorded =
    missing === 0
      ? all
      : fitOfRung(scores, {
          y: pick(cells.y),
          block: pick(tasterBlocks(cells)),
          level: pick(cells.level),
        })
  if (!isPresent(recorded)) return recorded
  const { present, rows } = recorded
  const answer = compareWithCovariate(rows, missing === 0 ? values : pick(values), recorded)
  if (!answer.ok) return absent(answer.reason)
  const { f, df1, df2, p } = answer.levels
  return {
    slope: answer.slope,
    f,
    df1,
    df2,
    p,
    widening: answer.widening,
    separable: answer.widening <= 3,
    means: meansOf(answer.levels, (at) => present.levels[at]?.id as LevelId),
  }
}

function tasterBlocks(cells: Cells): Int32Array {
  return cells.tasters.length > 1 ? cells.taster : new Int32Array(cells.y.length)
}
