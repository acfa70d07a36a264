import { type Absent, absent, isPresent } from '@/core/findings/reason.ts'
import { cellsOf } from '@/core/findings/rungs/cells.ts'
import type { RungName } from '@/core/findings/rungs/decisive-rung.ts'
import { doughsRows, factorRows, piecesRows } from '@/core/findings/rungs/higher-rungs.ts'
import { flatRows } from '@/core/findings/rungs/rows-rung.ts'
import { fitOfRung } from '@/core/findings/rungs/rung-of.ts'
import { tasterMeans } from '@/core/findings/rungs/taster-means.ts'
import { levelValues } from '@/core/findings/rungs/trend-of.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { type CurvePoint, curveAt } from '@/core/statistics/curve/curve-at.ts'
import { fitPolynomial } from '@/core/statistics/curve/polynomial-fit.ts'

/**
 * The fitted curve of a rung with its band, evenly spaced from the lowest to the highest level: y ~ block + L + L^2 from
 * three levels up, the line for two; height for the average block with plain 95 % t limits, point by point.
 */
export function curveBand(
  scores: ScoreTable,
  index: number,
  rung: 'rows' | RungName,
  points = 41,
): CurvePoint[] | Absent {
  if (!scores.factor.ordered) return absent('choice-factor')
  if (!scores.responses[index]) throw new RangeError(`the table has no response ${index}`)
  const cells = cellsOf(scores, index)
  if (cells.y.length === 0) return absent('no-scores')
  const compared = {
    rows: () => flatRows(cells),
    pieces: () => piecesRows(scores, cells, tasterMeans(cells, scores.levels.length)),
    doughs: () => doughsRows(cells),
    factor: () => factorRows(scores, cells),
  }
  const rows = compared[rung]()
  if (!isPresent(rows)) return rows
  const fitted = fitOfRung(scores, rows)
  if (!isPresent(fitted)) return fitted
  const values = levelValues(fitted.present)
  const curve = fitPolynomial(fitted.cells, values, values.length < 3 ? 1 : 2)
  if (!curve.ok) return absent(curve.reason)
  const low = Math.min(...values)
  const span = Math.max(...values) - low
  const at = Array.from({ length: points }, (_, step) => low + (span * step) / (points - 1))
  return curveAt(curve, at)
}
