import { commonSpread } from '@/core/design/spread.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { Cells } from '@/core/findings/rungs/cells.ts'
import type { FittedRungs } from '@/core/findings/rungs/decisive-rung.ts'
import type { ScoreResponse, ScoreTable } from '@/core/findings/table/score-table.ts'
import { bakeBaseRate } from '@/core/statistics/power/bake-base-rate.ts'
import type { Near } from './conclusion-shape.ts'

/** What the pieces themselves say, or the doughs where one session had several flights; null where neither rung answers. */
export function nearOf(
  scores: ScoreTable,
  cells: Cells,
  fitted: FittedRungs,
  response: ScoreResponse,
): Near | null {
  const rung = isPresent(fitted.doughs) ? 'doughs' : 'pieces'
  const found = fitted[rung]
  if (!isPresent(found)) return null
  const means = found.rung.means.toSorted((a, b) => b.estimate - a.estimate)
  const [highest, lowest] = [means[0], means.at(-1)]
  if (!highest || !lowest) return null
  return {
    rung,
    differ: found.rung.p < 0.05,
    p: found.rung.p,
    highest: highest.level,
    lowest: lowest.level,
    difference: highest.estimate - lowest.estimate,
    chance: response.scale === 'nine-point' ? chanceOf(scores, cells, rung, found.rung.df2) : null,
  }
}

/** From the spreads that are common on nine points. Pieces of one dough have no dough of their own. */
function chanceOf(scores: ScoreTable, cells: Cells, rung: 'pieces' | 'doughs', df2: number) {
  const levels = scores.levels.length
  const { batch, piece, tasterLevel, residual } = commonSpread
  const ofDoughs = scores.unit === 'batch' ? batch ** 2 : 0
  const tasters = cells.tasters.length
  if (rung === 'pieces') {
    if (tasters < 2) return null
    return bakeBaseRate({
      ...{ levels, tasters, sessions: cells.sessions },
      pieces: Math.max(cells.sessions, cells.flights),
      ...{ batchVariance: ofDoughs, pieceVariance: piece ** 2 },
      ...{ tasterLevelVariance: tasterLevel ** 2, residualVariance: residual ** 2 },
    })
  }
  // Over flights the pieces are the scatter and only the dough is common: blocks take the tasters' place.
  const flights = Math.round(df2 / (levels - 1)) + 1
  if (flights < 2 || ofDoughs === 0) return null
  return bakeBaseRate({
    ...{ levels, tasters: flights, sessions: 1, pieces: 1 },
    ...{ batchVariance: ofDoughs, pieceVariance: 0, tasterLevelVariance: piece ** 2 },
    residualVariance: residual ** 2 / Math.max(1, tasters),
  })
}
