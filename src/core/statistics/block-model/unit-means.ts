import { type Cells, gatherCells } from './cells.ts'
import { connectedGroups } from './connected-groups.ts'
import type { TwoWayCells } from './two-way-cells.ts'
import { twoWayMeans } from './two-way-means.ts'

/** Scores with who gave them and what they were given to, as codes from 0 up. */
export type UnitRows = {
  y: ArrayLike<number>
  taster: ArrayLike<number>
  unit: ArrayLike<number>
  tasterCount: number
  unitCount: number
}

/**
 * Marginal mean of each unit (null for a unit without rows) and the group it belongs to: units are comparable only within one
 * group. `groupCount` above 1 says that tasters and units fall into unconnected groups.
 */
export type UnitMeans = { means: (number | null)[]; groups: (number | null)[]; groupCount: number }

/**
 * Mean of every unit as if each taster of its group had scored it: marginal means of y ~ taster + unit, tasters counting the
 * same, so that a missing harsh taster does not lift a batch. Where every taster scored every unit equally often these are
 * plain means. Unconnected groups are solved apart; whether a group boundary cuts a block is for the caller to see.
 * In each group the larger of the two sides is swept out and the smaller fitted.
 *
 * @example unitMeans({ y: [1, 2, 6, 3, 6, 6], taster: [0, 0, 0, 1, 1, 1], unit: [0, 1, 2, 0, 1, 2], tasterCount: 2, unitCount: 3 }) // {"means": [2, 4, 6], "groupCount": 1} (plain means of a complete table)
 */
export function unitMeans(rows: UnitRows): UnitMeans {
  const manyTasters = rows.tasterCount > rows.unitCount
  const cells = gatherCells({
    y: rows.y,
    block: manyTasters ? rows.taster : rows.unit,
    level: manyTasters ? rows.unit : rows.taster,
    blockCount: manyTasters ? rows.tasterCount : rows.unitCount,
    levelCount: manyTasters ? rows.unitCount : rows.tasterCount,
  })
  const { ofBlock, ofLevel, count } = connectedGroups(cells)
  const groups = Array.from(manyTasters ? ofLevel : ofBlock, (group) => (group < 0 ? null : group))
  const whole = count === 1 && !ofBlock.includes(-1) && !ofLevel.includes(-1)
  const parts = whole ? [wholeTable(cells)] : partsByGroup(cells, ofBlock, count)
  const means = groups.map((): number | null => null)
  for (const { table, blocks, columns } of parts) {
    const found = twoWayMeans(table)
    const ofUnit = manyTasters ? found.columns : found.blocks
    for (const [at, unit] of (manyTasters ? columns : blocks).entries()) {
      means[unit] = cells.origin + (ofUnit[at] as number)
    }
  }
  return { means, groups, groupCount: count }
}

/** A table of cells whose tasters and units are linked, with the codes its blocks and columns had before. */
type Part = { table: TwoWayCells; blocks: number[]; columns: number[] }

function wholeTable(cells: Cells): Part {
  const { y, weight, block, level, blockCount, levelCount } = cells
  return {
    table: { y, weight, block, column: level, blockCount, columnCount: levelCount },
    blocks: Array.from({ length: blockCount }, (_, at) => at),
    columns: Array.from({ length: levelCount }, (_, at) => at),
  }
}

function partsByGroup(cells: Cells, ofBlock: Int32Array, count: number): Part[] {
  const groups: number[][] = Array.from({ length: count }, () => [])
  for (const [cell, block] of cells.block.entries()) groups[ofBlock[block] as number]?.push(cell)
  return groups.map((members) => {
    const block = numbered(members.map((cell) => cells.block[cell] as number))
    const column = numbered(members.map((cell) => cells.level[cell] as number))
    return {
      table: {
        y: Float64Array.from(members, (cell) => cells.y[cell] as number),
        weight: Float64Array.from(members, (cell) => cells.weight[cell] as number),
        block: block.codes,
        column: column.codes,
        blockCount: block.names.length,
        columnCount: column.names.length,
      },
      blocks: block.names,
      columns: column.names,
    }
  })
}

/** Codes without gaps, in the order in which they are met. */
function numbered(keys: readonly number[]): { codes: Int32Array; names: number[] } {
  const numbers = new Map<number, number>()
  const codes = Int32Array.from(keys, (key) => {
    const known = numbers.get(key) ?? numbers.size
    numbers.set(key, known)
    return known
  })
  return { codes, names: [...numbers.keys()] }
}
