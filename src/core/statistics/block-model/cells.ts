import { cellNumbers } from './cell-numbers.ts'
import { insistOnRows, type LevelRows } from './rows.ts'

/**
 * Rows gathered by block and level: each cell's mean and number of rows, which cell each row is in (`ofRow`), and the sum of
 * squares left inside the cells.
 * `y` is counted from `origin` (the first value), so that large values with small differences lose nothing.
 */
export type Cells = {
  y: Float64Array
  block: Int32Array
  level: Int32Array
  weight: Float64Array
  ofRow: Int32Array
  blockCount: number
  levelCount: number
  rowCount: number
  origin: number
  insideSumOfSquares: number
  lowest: number
  highest: number
}

/**
 * Gathers rows into cells of block × level. A model in block and level (or in a level's value) fits the cell means with
 * their numbers as weights exactly as it fits the rows; only the scatter inside the cells is to be added to the residual.
 *
 * @example gatherCells(rows) // {"rowCount": 6, "lowest": 1, "highest": 6, "insideSumOfSquares": 0} (the worked table)
 */
export function gatherCells(rows: LevelRows): Cells {
  insistOnRows(rows)
  const rowCount = rows.y.length
  const origin = rows.y[0] ?? 0
  const { ofRow, block, level } = cellNumbers(rows)
  const weight = new Float64Array(block.length)
  const means = new Float64Array(block.length)
  let [lowest, highest] = [Infinity, -Infinity]
  for (let i = 0; i < rowCount; i += 1) {
    const value = rows.y[i] as number
    lowest = Math.min(lowest, value)
    highest = Math.max(highest, value)
    const cell = ofRow[i] as number
    weight[cell] = (weight[cell] as number) + 1
  }
  const sums = new Float64Array(block.length)
  for (let pass = 0; pass < 2; pass += 1) {
    sums.fill(0)
    for (let i = 0; i < rowCount; i += 1) {
      const cell = ofRow[i] as number
      sums[cell] =
        (sums[cell] as number) + ((rows.y[i] as number) - origin - (means[cell] as number))
    }
    for (let cell = 0; cell < sums.length; cell += 1) {
      means[cell] = (means[cell] as number) + (sums[cell] as number) / (weight[cell] as number)
    }
  }
  let insideSumOfSquares = 0
  for (let i = 0; i < rowCount; i += 1) {
    const off = (rows.y[i] as number) - origin - (means[ofRow[i] as number] as number)
    insideSumOfSquares += off * off
  }
  return {
    y: means,
    block,
    level,
    weight,
    ofRow,
    blockCount: rows.blockCount,
    levelCount: rows.levelCount,
    rowCount,
    origin,
    insideSumOfSquares,
    lowest,
    highest,
  }
}
