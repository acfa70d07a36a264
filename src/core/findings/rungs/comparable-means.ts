import { type Absent, absent } from '@/core/findings/reason.ts'
import type { Cells } from './cells.ts'
import { marginalMeans, type UnitMeans } from './marginal-means.ts'

/** Unit means with the block each stands in, a session or a flight of one. */
export type ComparableMeans = UnitMeans & { block: number[] }

/**
 * Means of units that may be compared within blocks. Where the boundary between groups of tasters who share no unit cuts a
 * block, its units were judged by others each, and the answer is `tasters-not-shared`.
 */
export function comparableMeans(
  cells: Cells,
  unit: 'batch' | 'piece',
  blocking: 'session' | 'flight',
): ComparableMeans | Absent {
  const means = marginalMeans(cells, cells[unit], unit === 'batch' ? cells.batches : cells.pieces)
  const block = means[blocking]
  const groupOfBlock = new Map<number, number>()
  for (const [u, at] of block.entries()) {
    const known = groupOfBlock.get(at)
    if (known !== undefined && known !== means.group[u]) return absent('tasters-not-shared')
    groupOfBlock.set(at, means.group[u] as number)
  }
  return { ...means, block }
}
