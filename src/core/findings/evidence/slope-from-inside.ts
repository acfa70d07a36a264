import type { Cells } from '@/core/findings/rungs/cells.ts'
import { marginalMeans } from '@/core/findings/rungs/marginal-means.ts'
import { slopeWithin } from '@/core/statistics/block-model/slope-within.ts'

/** The slope of something that varies inside a unit, and what it comes from. */
export interface InnerSlope {
  from: 'tasters' | 'flights'
  slope: number
  se: number
  df: number
}

/**
 * The slope of minutes or positions from inside the units alone: by taster where those who had one piece had it at different
 * ones (score ~ taster in a session + piece + it), else by flight where one unit came in several (piece mean ~ flight + unit + it). Null where
 * it varies inside no unit.
 */
export function slopeFromInside(
  cells: Cells,
  values: Float64Array,
  rung: 'factor' | 'doughs',
  unit: 'batch' | 'piece',
): InnerSlope | null {
  const byTaster = slopeByTaster(cells, values)
  if (byTaster) return { from: 'tasters', ...byTaster }
  if (rung === 'doughs' || cells.flights <= cells.sessions) return null
  const byFlight = slopeByFlight(cells, values, unit)
  return byFlight && { from: 'flights', ...byFlight }
}

function slopeByTaster(cells: Cells, values: Float64Array) {
  const { tasters } = cells
  if (tasters.length < 2 || !variesInside(values, cells.piece, cells.pieces)) return null
  const block = cells.session.map(
    (session, row) => session * tasters.length + (cells.taster[row] as number),
  )
  return slopeWithin(cells.y, values, block, cells.piece, {
    blocks: cells.sessions * tasters.length,
    units: 1 + cells.piece.reduce((most, code) => Math.max(most, code), 0),
  })
}

function slopeByFlight(cells: Cells, values: Float64Array, unit: 'batch' | 'piece') {
  const pieces = new Set(cells.piece).size
  if (pieces !== cells.pieces) return null
  const means = marginalMeans(cells, cells.piece, cells.pieces)
  const own = marginalMeans({ ...cells, y: values }, cells.piece, cells.pieces)
  const keys = new Map<string, number>()
  const batchOf = new Int32Array(cells.pieces)
  for (let row = cells.y.length - 1; row >= 0; row -= 1)
    batchOf[cells.piece[row] as number] = cells.batch[row] as number
  const units = Int32Array.from(means.level, (level, piece) => {
    const key = unit === 'batch' ? `${batchOf[piece]}` : `${means.session[piece]} ${level}`
    const known = keys.get(key) ?? keys.size
    keys.set(key, known)
    return known
  })
  const flights = Int32Array.from(means.flight)
  return slopeWithin(means.y, own.y, flights, units, {
    blocks: 1 + flights.reduce((most, code) => Math.max(most, code), 0),
    units: keys.size,
  })
}

/** Whether it differs within any unit by more than rounding. */
function variesInside(values: Float64Array, unit: Int32Array, units: number): boolean {
  const first = new Float64Array(units + 1).fill(Number.NaN)
  for (let row = 0; row < values.length; row += 1) {
    const at = unit[row] as number
    const known = first[at] as number
    if (Number.isNaN(known)) first[at] = values[row] as number
    else if (Math.abs(known - (values[row] as number)) > 1e-9) return true
  }
  return false
}
