import { blockedLeastSquares } from '@/core/statistics/least-squares/blocked-least-squares.ts'
import { indicator } from '@/core/statistics/least-squares/indicator.ts'
import type { BlockedRows } from '@/core/statistics/least-squares/within-blocks.ts'
import { type Cells, gatherCells } from './cells.ts'

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
 */
export function unitMeans(rows: UnitRows): UnitMeans {
  const cells = gatherCells({
    y: rows.y,
    block: rows.unit,
    level: rows.taster,
    blockCount: rows.unitCount,
    levelCount: rows.tasterCount,
  })
  const { unitGroup, tasterGroup, groupCount } = connectedGroups(cells)
  const effects = tasterEffects(cells, tasterGroup)
  const groupSum = new Float64Array(groupCount)
  const groupSize = new Float64Array(groupCount)
  for (const [taster, group] of tasterGroup.entries()) {
    if (group < 0) continue
    groupSum[group] = (groupSum[group] as number) + (effects[taster] as number)
    groupSize[group] = (groupSize[group] as number) + 1
  }
  const sums = new Float64Array(rows.unitCount)
  const weights = new Float64Array(rows.unitCount)
  for (let i = 0; i < cells.y.length; i += 1) {
    const unit = cells.block[i] as number
    const weight = cells.weight[i] as number
    const own = (cells.y[i] as number) - (effects[cells.level[i] as number] as number)
    sums[unit] = (sums[unit] as number) + weight * own
    weights[unit] = (weights[unit] as number) + weight
  }
  return {
    means: Array.from(unitGroup, (group, unit) =>
      group < 0
        ? null
        : cells.origin +
          (sums[unit] as number) / (weights[unit] as number) +
          (groupSum[group] as number) / (groupSize[group] as number),
    ),
    groups: Array.from(unitGroup, (group) => (group < 0 ? null : group)),
    groupCount,
  }
}

/** How far each taster lies from the first of the own group, units swept out; all zero when nothing is missing. */
function tasterEffects(cells: Cells, tasterGroup: Int32Array): Float64Array {
  const effects = new Float64Array(cells.levelCount)
  const balanced =
    cells.y.length === cells.blockCount * cells.levelCount &&
    cells.weight.every((weight) => weight === cells.weight[0])
  if (balanced) return effects
  const first = new Map<number, number>()
  const others: number[] = []
  for (const [taster, group] of tasterGroup.entries()) {
    if (group < 0) continue
    if (first.has(group)) others.push(taster)
    else first.set(group, taster)
  }
  const together = gatherPatterns(cells)
  const columns = others.map((taster) => indicator(together.level, taster))
  const result = blockedLeastSquares(together, columns)
  if (!result.ok) throw new Error('connected tasters must have independent effects')
  for (const [j, taster] of others.entries()) effects[taster] = result.fit.coefficients[j] as number
  return effects
}

/**
 * Units that the same tasters scored equally often, taken together: their part of the design is the same, so the tasters'
 * effects follow from the mean of such units with their number as weight. Hundreds of sessions become a few patterns.
 */
function gatherPatterns(cells: Cells): BlockedRows & { level: Int32Array } {
  const patterns = new Map<
    string,
    { block: number; units: number; cells: number[]; sums: number[] }
  >()
  for (let from = 0; from < cells.y.length; ) {
    const unit = cells.block[from] as number
    let to = from
    let key = ''
    for (; to < cells.y.length && cells.block[to] === unit; to += 1) {
      key += `${cells.level[to]}:${cells.weight[to]} `
    }
    const pattern = patterns.get(key) ?? { block: patterns.size, units: 0, cells: [], sums: [] }
    if (pattern.units === 0) patterns.set(key, pattern)
    pattern.units += 1
    for (let i = from; i < to; i += 1) {
      if (pattern.units === 1) pattern.cells.push(i)
      pattern.sums[i - from] = (pattern.sums[i - from] ?? 0) + (cells.y[i] as number)
    }
    from = to
  }
  const rows = [...patterns.values()].flatMap(({ block, units, cells: first, sums }) =>
    first.map((cell, i) => ({
      block,
      level: cells.level[cell] as number,
      weight: units * (cells.weight[cell] as number),
      y: (sums[i] as number) / units,
    })),
  )
  return {
    y: Float64Array.from(rows, (row) => row.y),
    block: Int32Array.from(rows, (row) => row.block),
    level: Int32Array.from(rows, (row) => row.level),
    weight: Float64Array.from(rows, (row) => row.weight),
    blockCount: patterns.size,
  }
}

/** Groups of units and tasters that chains of cells link, numbered by their first unit; −1 for one without rows. */
function connectedGroups(cells: Cells) {
  const parent = Int32Array.from({ length: cells.blockCount + cells.levelCount }, (_, i) => i)
  const rootOf = (start: number): number => {
    let node = start
    while (parent[node] !== node) {
      parent[node] = parent[parent[node] as number] as number
      node = parent[node] as number
    }
    return node
  }
  for (let i = 0; i < cells.y.length; i += 1) {
    const unitRoot = rootOf(cells.block[i] as number)
    parent[rootOf(cells.blockCount + (cells.level[i] as number))] = unitRoot
  }
  const numbers = new Map<number, number>()
  const unitGroup = new Int32Array(cells.blockCount).fill(-1)
  const tasterGroup = new Int32Array(cells.levelCount).fill(-1)
  for (let i = 0; i < cells.y.length; i += 1) {
    const unit = cells.block[i] as number
    if ((unitGroup[unit] as number) < 0) {
      const root = rootOf(unit)
      if (!numbers.has(root)) numbers.set(root, numbers.size)
      unitGroup[unit] = numbers.get(root) as number
    }
    tasterGroup[cells.level[i] as number] = unitGroup[unit] as number
  }
  return { unitGroup, tasterGroup, groupCount: numbers.size }
}
