import { type Absent, absent, isPresent } from '@/core/findings/reason.ts'
import type { Cells } from '@/core/findings/rungs/cells.ts'
import { cellsWhere } from '@/core/findings/rungs/cells-where.ts'
import type { RungName } from '@/core/findings/rungs/decisive-rung.ts'
import { doughsRows, factorRows, piecesRows } from '@/core/findings/rungs/higher-rungs.ts'
import { fitOfRung, meansOf, type RungFit, type RungRows } from '@/core/findings/rungs/rung-of.ts'
import type { LevelId } from '@/core/findings/rungs/rung-shape.ts'
import { tasterMeans } from '@/core/findings/rungs/taster-means.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { levelDifference } from '@/core/statistics/block-model/level-difference.ts'
import { compareWithCovariate } from '@/core/statistics/block-model/with-covariate.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import type { Beside } from './evidence-shape.ts'
import { type InnerSlope, slopeFromInside } from './slope-from-inside.ts'

/** Beyond it a difference is so much less sure that level and rider cannot be told apart. */
const widest = 2
/** With fewer degrees of freedom a slope is known to ±3 points in 10 minutes at best. */
const fewestDf = 4

/**
 * Was it freshness (`minutes`), or the order (`position`)? At the rung that answers, never over rows: where it varies inside a unit, its slope
 * from there alone (by taster, else by flight), the unit means brought to the mean of it and compared as usual; else unit means ~
 * block + it + level. Rows where it was not recorded are left out. Refuses `too-few-to-tell` below four degrees of freedom, and
 * `covariate-not-separable` where it follows the levels. Worked out by simulation for this project.
 */
export function besideLevel(
  scores: ScoreTable,
  all: Cells,
  what: 'minutes' | 'position',
  rung: RungName,
  found: RungFit,
): Beside | Absent {
  const cells = recorded(all, what)
  if (cells.y.length === 0) return absent(what === 'minutes' ? 'no-minutes' : 'no-positions')
  const rows = rowsAt(scores, cells, rung)
  if (!isPresent(rows)) return rows
  const covariate = rowsAt(scores, { ...cells, y: cells[what] }, rung)
  if (!isPresent(covariate)) return covariate
  // Where it was recorded throughout, the rung has been fitted already.
  const plain = cells === all ? found : fitOfRung(scores, rows)
  if (!isPresent(plain)) return plain
  const ofLevel = levelAverages(covariate, plain)
  const apart = Math.max(...ofLevel) - Math.min(...ofLevel)
  const inner = rung === 'pieces' ? null : slopeFromInside(cells, cells[what], rung, scores.unit)
  return {
    apart,
    answer: inner
      ? fromInside(scores, rows, covariate, plain, ofLevel, inner)
      : fromUnits(covariate, plain),
  }
}

/** Only the cells where it was recorded. */
function recorded(cells: Cells, what: 'minutes' | 'position'): Cells {
  const known = cells[what]
  return known.some(Number.isNaN) ? cellsWhere(cells, (row) => !Number.isNaN(known[row])) : cells
}

function rowsAt(scores: ScoreTable, cells: Cells, rung: RungName): RungRows | Absent {
  if (rung === 'factor') return factorRows(scores, cells)
  if (rung === 'doughs') return doughsRows(cells)
  return piecesRows(scores, cells, tasterMeans(cells, scores.levels.length))
}

function levelAverages({ y, level }: RungRows, { present }: RungFit): number[] {
  const sums = present.levels.map(() => ({ sum: 0, n: 0 }))
  const code = new Map(present.index.map((at, index) => [at, index]))
  for (let row = 0; row < y.length; row += 1) {
    const one = sums[code.get(level[row] as number) as number]
    if (!one) continue
    one.sum += y[row] as number
    one.n += 1
  }
  return sums.map(({ sum, n }) => sum / n)
}

function fromInside(
  scores: ScoreTable,
  rows: RungRows,
  covariate: RungRows,
  plain: RungFit,
  ofLevel: readonly number[],
  { from, slope, se, df }: InnerSlope,
): Extract<Beside['answer'], object> {
  if (df < fewestDf) return absent('too-few-to-tell')
  const count = covariate.y.length
  const mean = Array.from(covariate.y).reduce((sum, value) => sum + value / count, 0)
  const y = Array.from(rows.y, (value, at) => value - slope * ((covariate.y[at] as number) - mean))
  const corrected = fitOfRung(scores, { ...rows, y })
  if (!isPresent(corrected)) return corrected
  let widening = 1
  for (const [a, own] of ofLevel.entries())
    for (const [b, other] of ofLevel.entries()) {
      if (a === b) continue
      const added = ((own - other) * se) / levelDifference(plain.fit, a, b).se
      widening = Math.max(widening, Math.sqrt(1 + added ** 2))
    }
  return answered(from, { slope, se, df }, widening, corrected)
}

function fromUnits(covariate: RungRows, plain: RungFit): Extract<Beside['answer'], object> {
  if (plain.fit.df2 - 1 < fewestDf) {
    const first = covariate.y[0] as number
    const constant = Array.from(covariate.y).every((value) => Math.abs(value - first) < 1e-9)
    return absent(constant ? 'covariate-not-separable' : 'too-few-to-tell')
  }
  const found = compareWithCovariate(plain.rows, covariate.y, plain)
  if (!found.ok) return absent(found.reason)
  const { slope, slopeSe: se, widening, levels } = found
  return answered('units', { slope, se, df: levels.df2 }, widening, {
    ...plain,
    fit: levels,
  })
}

function answered(
  from: 'tasters' | 'flights' | 'units',
  { slope, se, df }: { slope: number; se: number; df: number },
  widening: number,
  { fit, present }: Pick<RungFit, 'fit' | 'present'>,
): Exclude<Beside['answer'], Absent> {
  const half = tHalfWidth(0.95, df) * se
  const { f, df1, df2, p } = fit
  return {
    ...{ from, slope, low: slope - half, high: slope + half, df },
    ...{ widening, told: widening <= widest, f, df1, df2, p },
    means: meansOf(fit, (at) => present.levels[at]?.id as LevelId),
  }
}
