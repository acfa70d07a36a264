import { gatherCells } from '@/core/statistics/block-model/cells.ts'
import type { LevelRows } from '@/core/statistics/block-model/rows.ts'
import { blockWeights, sweepBlocks } from '@/core/statistics/least-squares/within-blocks.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'

/** What a curve needs from each cluster: sums of products of x, x² and y within its blocks, five numbers a cluster. */
export type CurveClusters = { count: number; sums: Float64Array; centre: number; scale: number }

/**
 * Sums of products, cluster by cluster, of the levels centred and scaled to −1…1, their squares and the response, all with
 * block means taken out. A cluster is what is drawn as a whole (a taster, a session); `clusterOfBlock` says which cluster a
 * block belongs to, so no block reaches over two clusters.
 *
 * Refuses `no-rows`, `needs-three-levels`, and `too-few-clusters` below two.
 *
 * @example curveClusters(rows, [0, 1, 2], [0, 1]) // {"ok": true, "count": 2, "centre": 1, "scale": 1} (by hand)
 */
export function curveClusters(
  rows: LevelRows,
  levelValues: readonly number[],
  clusterOfBlock: ArrayLike<number>,
): Answer<CurveClusters> {
  const cells = gatherCells(rows)
  if (cells.rowCount === 0) return refuse('no-rows')
  const values = Float64Array.from(cells.level, (level) => levelValues[level] as number)
  const distinct = new Set(values)
  if (distinct.size < 3) return refuse('needs-three-levels')
  const lowest = Math.min(...distinct)
  const highest = Math.max(...distinct)
  const centre = lowest + (highest - lowest) / 2
  const scale = (highest - lowest) / 2
  const raw = values.map((value) => (value - centre) / scale)
  const weights = blockWeights(cells)
  const x = sweepBlocks(raw, cells, weights).column
  const square = sweepBlocks(
    raw.map((value) => value * value),
    cells,
    weights,
  ).column
  const y = sweepBlocks(cells.y, cells, weights).column
  const codes = new Map<number, number>()
  for (const block of cells.block) {
    const cluster = clusterOfBlock[block]
    if (cluster === undefined) throw new RangeError(`block ${block} has no cluster`)
    if (!codes.has(cluster)) codes.set(cluster, codes.size)
  }
  const count = codes.size
  if (count < 2) return refuse('too-few-clusters')
  const sums = new Float64Array(5 * count)
  for (let i = 0; i < x.length; i += 1) {
    const at = 5 * (codes.get(clusterOfBlock[cells.block[i] as number] as number) as number)
    const [xi, si, yi] = [x[i] as number, square[i] as number, y[i] as number]
    const products = [xi * xi, xi * si, si * si, xi * yi, si * yi]
    for (const [j, product] of products.entries()) sums[at + j] = (sums[at + j] as number) + product
  }
  return { ok: true, count, sums, centre, scale }
}
