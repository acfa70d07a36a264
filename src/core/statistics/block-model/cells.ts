import { insistOnRows, type LevelRows } from './rows.ts'

/**
 * Rows gathered by block and level: each cell's mean and number of rows, and the sum of squares left inside the cells.
 * `y` is counted from `origin` (the first value), so that large values with small differences lose nothing.
 */
export type Cells = {
  y: Float64Array
  block: Int32Array
  level: Int32Array
  weight: Float64Array
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
 */
export function gatherCells(rows: LevelRows): Cells {
  insistOnRows(rows)
  const { levelCount } = rows
  const origin = rows.y[0] ?? 0
  const y = Float64Array.from(rows.y, (value) => value - origin)
  const size = rows.blockCount * levelCount
  const index = Int32Array.from(
    { length: y.length },
    (_, i) => (rows.block[i] as number) * levelCount + (rows.level[i] as number),
  )
  const counts = new Float64Array(size)
  for (const cell of index) counts[cell] = (counts[cell] as number) + 1
  const means = new Float64Array(size)
  for (let pass = 0; pass < 2; pass += 1) {
    const sums = new Float64Array(size)
    for (let i = 0; i < y.length; i += 1) {
      const cell = index[i] as number
      sums[cell] = (sums[cell] as number) + ((y[i] as number) - (means[cell] as number))
    }
    for (let cell = 0; cell < size; cell += 1) {
      const count = counts[cell] as number
      if (count > 0) means[cell] = (means[cell] as number) + (sums[cell] as number) / count
    }
  }
  let [insideSumOfSquares, lowest, highest] = [0, Infinity, -Infinity]
  for (let i = 0; i < y.length; i += 1) {
    const value = y[i] as number
    insideSumOfSquares += (value - (means[index[i] as number] as number)) ** 2
    lowest = Math.min(lowest, value)
    highest = Math.max(highest, value)
  }
  const filled = Int32Array.from({ length: size }, (_, cell) => cell).filter(
    (cell) => (counts[cell] as number) > 0,
  )
  return {
    y: Float64Array.from(filled, (cell) => means[cell] as number),
    block: filled.map((cell) => Math.floor(cell / levelCount)),
    level: filled.map((cell) => cell % levelCount),
    weight: Float64Array.from(filled, (cell) => counts[cell] as number),
    blockCount: rows.blockCount,
    levelCount,
    rowCount: y.length,
    origin,
    insideSumOfSquares,
    lowest: lowest + origin,
    highest: highest + origin,
  }
}
