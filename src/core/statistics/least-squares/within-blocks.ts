/** Weighted rows of a response with their block; a row may stand for several (then its weight is their number). */
export type BlockedRows = {
  y: Float64Array
  block: Int32Array
  blockCount: number
  weight: Float64Array
}

/** A column with its block means taken out, each entry times the root of its row's weight. */
export type Swept = { column: Float64Array; blockMeans: Float64Array; rawLength: number }

/**
 * Takes the block means out of a column: the exact orthogonal projection that fitting a block effect amounts to, so that
 * hundreds of blocks cost no column each. Means are taken twice, the second time of what the first left, for the last digits.
 */
export function sweepBlocks(raw: Float64Array, rows: BlockedRows, weights: Float64Array): Swept {
  const { block, weight } = rows
  const column = new Float64Array(raw)
  const blockMeans = new Float64Array(rows.blockCount)
  const sums = new Float64Array(rows.blockCount)
  let rawLength = 0
  for (let i = 0; i < raw.length; i += 1) {
    const value = raw[i] as number
    rawLength += (weight[i] as number) * value * value
  }
  for (let pass = 0; pass < 2; pass += 1) {
    sums.fill(0)
    for (let i = 0; i < column.length; i += 1) {
      const b = block[i] as number
      sums[b] = (sums[b] as number) + (weight[i] as number) * (column[i] as number)
    }
    for (let b = 0; b < sums.length; b += 1) {
      sums[b] = (weights[b] as number) > 0 ? (sums[b] as number) / (weights[b] as number) : 0
      blockMeans[b] = (blockMeans[b] as number) + (sums[b] as number)
    }
    for (let i = 0; i < column.length; i += 1) {
      column[i] = (column[i] as number) - (sums[block[i] as number] as number)
    }
  }
  for (let i = 0; i < column.length; i += 1) {
    const w = weight[i] as number
    if (w !== 1) column[i] = (column[i] as number) * Math.sqrt(w)
  }
  return { column, blockMeans, rawLength: Math.sqrt(rawLength) }
}

/** Total weight of each block. */
export function blockWeights({ block, blockCount, weight }: BlockedRows): Float64Array {
  const totals = new Float64Array(blockCount)
  for (let i = 0; i < block.length; i += 1) {
    const b = block[i] as number
    totals[b] = (totals[b] as number) + (weight[i] as number)
  }
  return totals
}
