import { unitMeans } from '@/core/statistics/block-model/unit-means.ts'
import type { Cells } from './cells.ts'

/** Marginal means of units (batches or pieces), with what each unit belongs to; `flight` is that of its first cell. */
export interface UnitMeans {
  y: number[]
  level: number[]
  session: number[]
  flight: number[]
  /** The level as handled of the unit's first cell (one unit was handled once); NaN when it was not logged. */
  handled: number[]
  /** Units are comparable only within one group, the tasters of another group being others. */
  group: number[]
}

/**
 * Means of units that a missing harsh taster does not lift: marginal means of y ~ taster + unit over all rows, each taster
 * counting alike (see `unitMeans`), within each group where tasters and units fall into unconnected ones. Without tasters,
 * plain means.
 */
export function marginalMeans(cells: Cells, unit: Int32Array, units: number): UnitMeans {
  const { means, groups } = unitMeans({
    y: cells.y,
    taster: cells.tasters.length === 0 ? new Int32Array(cells.y.length) : cells.taster,
    unit,
    tasterCount: Math.max(1, cells.tasters.length),
    unitCount: units,
  })
  const rows = means.map(() => -1)
  for (let row = unit.length - 1; row >= 0; row -= 1) rows[unit[row] as number] = row
  return {
    y: means.map((mean) => mean as number),
    level: rows.map((row) => cells.level[row] as number),
    session: rows.map((row) => cells.session[row] as number),
    flight: rows.map((row) => cells.flight[row] as number),
    handled: rows.map((row) => cells.handled[row] as number),
    group: groups.map((group) => group as number),
  }
}
