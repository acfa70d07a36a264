import type { Cells } from './cells.ts'

/** Group of each block and level, −1 for one without rows; groups are numbered by their first block. */
export type ConnectedGroups = { ofBlock: Int32Array; ofLevel: Int32Array; count: number }

/** What is to be linked: the block and level of each cell, or of each row, which comes to the same. */
export type Linked = Pick<Cells, 'block' | 'level' | 'blockCount' | 'levelCount'>

/** Which blocks and levels chains of cells link: only within such a group can they be compared (union and find). */
export function connectedGroups(cells: Linked): ConnectedGroups {
  const parent = Int32Array.from({ length: cells.blockCount + cells.levelCount }, (_, i) => i)
  const rootOf = (start: number): number => {
    let node = start
    while (parent[node] !== node) {
      parent[node] = parent[parent[node] as number] as number
      node = parent[node] as number
    }
    return node
  }
  for (let i = 0; i < cells.block.length; i += 1) {
    const blockRoot = rootOf(cells.block[i] as number)
    parent[rootOf(cells.blockCount + (cells.level[i] as number))] = blockRoot
  }
  const numbers = new Map<number, number>()
  const ofBlock = new Int32Array(cells.blockCount).fill(-1)
  const ofLevel = new Int32Array(cells.levelCount).fill(-1)
  for (let i = 0; i < cells.block.length; i += 1) {
    const block = cells.block[i] as number
    if ((ofBlock[block] as number) < 0) {
      const root = rootOf(block)
      if (!numbers.has(root)) numbers.set(root, numbers.size)
      ofBlock[block] = numbers.get(root) as number
    }
    ofLevel[cells.level[i] as number] = ofBlock[block] as number
  }
  return { ofBlock, ofLevel, count: numbers.size }
}
