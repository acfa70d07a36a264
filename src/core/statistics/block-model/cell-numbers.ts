import type { LevelRows } from './rows.ts'

/** The filled cells of some rows: which cell each row belongs to, and the block and level of each cell, in that order. */
export type CellNumbers = { ofRow: Int32Array; block: Int32Array; level: Int32Array }

/**
 * Numbers the filled cells of block × level, blocks first. A full table is counted off; one with far more places than rows
 * (thousands of tasters, each with a few batches) is kept as the list of filled places, so that memory grows with the rows alone.
 */
export function cellNumbers(rows: LevelRows): CellNumbers {
  const { levelCount } = rows
  const rowCount = rows.y.length
  const places = new Float64Array(rowCount)
  for (let i = 0; i < rowCount; i += 1) {
    places[i] = (rows.block[i] as number) * levelCount + (rows.level[i] as number)
  }
  const size = rows.blockCount * levelCount
  const { filled, ofRow } = size <= 8 * rowCount + 1000 ? ofTable(places, size) : ofList(places)
  const block = new Int32Array(filled.length)
  const level = new Int32Array(filled.length)
  for (let cell = 0; cell < filled.length; cell += 1) {
    const place = filled[cell] as number
    block[cell] = Math.floor(place / levelCount)
    level[cell] = place % levelCount
  }
  return { ofRow, block, level }
}

type Filled = { filled: ArrayLike<number>; ofRow: Int32Array }

function ofTable(places: Float64Array, size: number): Filled {
  const numbers = new Int32Array(size).fill(-1)
  let cells = 0
  for (let i = 0; i < places.length; i += 1) {
    const place = places[i] as number
    if (numbers[place] === -1) cells += 1
    numbers[place] = 0
  }
  const filled = new Int32Array(cells)
  let cell = 0
  for (let place = 0; place < size; place += 1) {
    if (numbers[place] === -1) continue
    numbers[place] = cell
    filled[cell] = place
    cell += 1
  }
  const ofRow = new Int32Array(places.length)
  for (let i = 0; i < places.length; i += 1) ofRow[i] = numbers[places[i] as number] as number
  return { filled, ofRow }
}

function ofList(places: Float64Array): Filled {
  const filled = Float64Array.from(new Set(places)).sort()
  const numbers = new Map<number, number>()
  for (const [number, place] of filled.entries()) numbers.set(place, number)
  return { filled, ofRow: Int32Array.from(places, (place) => numbers.get(place) as number) }
}
