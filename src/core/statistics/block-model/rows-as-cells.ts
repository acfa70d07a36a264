import type { Cells } from './cells.ts'
import { insistOnRows, type LevelRows } from './rows.ts'

/** Every row a cell of its own. */
export function rowsAsCells(rows: LevelRows): Cells {
  insistOnRows(rows)
  const origin = rows.y[0] ?? 0
  const y = Float64Array.from(rows.y, (value) => value - origin)
  return {
    y,
    block: Int32Array.from(rows.block),
    level: Int32Array.from(rows.level),
    weight: new Float64Array(y.length).fill(1),
    ofRow: Int32Array.from(y.keys()),
    blockCount: rows.blockCount,
    levelCount: rows.levelCount,
    rowCount: y.length,
    origin,
    insideSumOfSquares: 0,
    lowest: origin + y.reduce((least, value) => Math.min(least, value), Infinity),
    highest: origin + y.reduce((most, value) => Math.max(most, value), -Infinity),
  }
}
