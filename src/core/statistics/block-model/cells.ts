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
  const rowCount = rows.y.length
  const origin = rows.y[0] ?? 0
  const size = rows.blockCount * levelCount
  const y = new Float64Array(rowCount)
  const index = new Int32Array(rowCount)
  const counts = new Int32Array(size)
  const means = new Float64Array(size)
  let [lowest, highest] = [Infinity, -Infinity]
  for (let i = 0; i < rowCount; i += 1) {
    const value = rows.y[i] as number
    lowest = Math.min(lowest, value)
    highest = Math.max(highest, value)
    const cell = (rows.block[i] as number) * levelCount + (rows.level[i] as number)
    y[i] = value - origin
    index[i] = cell
    counts[cell] = (counts[cell] as number) + 1
  }
  const sums = new Float64Array(size)
  for (let pass = 0; pass < 2; pass += 1) {
    sums.fill(0)
    for (let i = 0; i < rowCount; i += 1) {
      const cell = index[i] as number
      sums[cell] = (sums[cell] as number) + ((y[i] as number) - (means[cell] as number))
    }
    for (let cell = 0; cell < size; cell += 1) {
      const count = counts[cell] as number
      if (count > 0) means[cell] = (means[cell] as number) + (sums[cell] as number) / count
    }
  }
  let insideSumOfSquares = 0
  for (let i = 0; i < rowCount; i += 1) {
    const off = (y[i] as number) - (means[index[i] as number] as number)
    insideSumOfSquares += off * off
  }
  return {
    ...filledCells(counts, means, levelCount),
    blockCount: rows.blockCount,
    levelCount,
    rowCount,
    origin,
    insideSumOfSquares,
    lowest,
    highest,
  }
}

function filledCells(counts: Int32Array, means: Float64Array, levelCount: number) {
  let filled = 0
  for (let cell = 0; cell < counts.length; cell += 1) if ((counts[cell] as number) > 0) filled += 1
  const y = new Float64Array(filled)
  const weight = new Float64Array(filled)
  const block = new Int32Array(filled)
  const level = new Int32Array(filled)
  let at = 0
  for (let cell = 0; cell < counts.length; cell += 1) {
    const count = counts[cell] as number
    if (count === 0) continue
    y[at] = means[cell] as number
    weight[at] = count
    block[at] = Math.floor(cell / levelCount)
    level[at] = cell % levelCount
    at += 1
  }
  return { y, weight, block, level }
}
