import type { BlockedRows } from '@/core/statistics/least-squares/within-blocks.ts'
import type { TwoWayCells } from './two-way-cells.ts'

type Pattern = { block: number; blocks: number; cells: number[]; sums: number[] }

/**
 * Blocks whose columns are filled equally often, taken together: their part of the design is the same, so the columns' effects
 * follow from the mean of such blocks with their number as weight. Hundreds of sessions become a few patterns.
 */
export function gatherPatterns(cells: TwoWayCells): BlockedRows & { column: Int32Array } {
  const patterns = new Map<string, Pattern>()
  for (let from = 0; from < cells.y.length; ) {
    const block = cells.block[from] as number
    let to = from
    let key = ''
    for (; to < cells.y.length && cells.block[to] === block; to += 1) {
      key += `${cells.column[to]}:${cells.weight[to]} `
    }
    const pattern = patterns.get(key) ?? { block: patterns.size, blocks: 0, cells: [], sums: [] }
    if (pattern.blocks === 0) patterns.set(key, pattern)
    pattern.blocks += 1
    for (let i = from; i < to; i += 1) {
      if (pattern.blocks === 1) pattern.cells.push(i)
      pattern.sums[i - from] = (pattern.sums[i - from] ?? 0) + (cells.y[i] as number)
    }
    from = to
  }
  const rows = [...patterns.values()].flatMap(({ block, blocks, cells: first, sums }) =>
    first.map((cell, i) => ({
      block,
      column: cells.column[cell] as number,
      weight: blocks * (cells.weight[cell] as number),
      y: (sums[i] as number) / blocks,
    })),
  )
  return {
    y: Float64Array.from(rows, (row) => row.y),
    block: Int32Array.from(rows, (row) => row.block),
    column: Int32Array.from(rows, (row) => row.column),
    weight: Float64Array.from(rows, (row) => row.weight),
    blockCount: patterns.size,
  }
}
