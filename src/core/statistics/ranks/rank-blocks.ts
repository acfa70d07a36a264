import { type Midranks, midranks } from './midranks.ts'

/** Blocks (tasters) whose every level has a value, ranked within themselves; `leftOut` counts the others. */
export type RankedBlocks = { blocks: Midranks[]; levelCount: number; leftOut: number }

/**
 * Ranks within each block: one row for each block, one entry for each level, null for a missing one.
 * Blocks with a missing level are left out and counted.
 *
 * @example rankBlocks([[5, 7, 7], [1, null, 2]]) // {"levelCount": 3, "leftOut": 1} (by hand)
 */
export function rankBlocks(table: readonly (readonly (number | null)[])[]): RankedBlocks {
  const complete = table.filter((row): row is readonly number[] => row.every((one) => one !== null))
  return {
    blocks: complete.map((row) => midranks(row)),
    levelCount: table[0]?.length ?? 0,
    leftOut: table.length - complete.length,
  }
}

/** Sum of the ranks of each level. */
export function rankSumsOf({ blocks, levelCount }: RankedBlocks): number[] {
  return Array.from({ length: levelCount }, (_, level) =>
    blocks.reduce((sum, { ranks }) => sum + (ranks[level] as number), 0),
  )
}
