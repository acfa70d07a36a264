import { blockedLeastSquares } from '@/core/statistics/least-squares/blocked-least-squares.ts'
import type { Cells } from './cells.ts'

/** Marginal means of units (batches or pieces), with what each unit belongs to; `flight` is that of its first cell. */
export interface UnitMeans {
  y: number[]
  level: number[]
  session: number[]
  flight: number[]
  /** The level as handled, mean over the unit's cells; null when it was not logged. */
  handled: (number | null)[]
}

/**
 * Means of units that a missing harsh taster does not lift: marginal means of y ~ taster + unit over all rows, each taster
 * counting alike. Where tasters and units fall into unconnected groups, within each group. When every taster scored
 * every unit of a group equally often, plain means are exactly that; else the taster effects are fitted by least squares
 * after the units. Without tasters, plain means. `group` says which group each unit is of.
 */
export function marginalMeans(
  cells: Cells,
  unit: readonly number[],
  units: number,
): UnitMeans & { group: number[] } {
  const count = new Array<number>(units).fill(0)
  const effects = tasterEffects(cells, unit, units)
  const sums = new Array<number>(units).fill(0)
  const facts = emptyFacts(units)
  for (let row = 0; row < cells.y.length; row += 1) {
    const u = unit[row] as number
    count[u] = (count[u] as number) + 1
    sums[u] =
      (sums[u] as number) +
      (cells.y[row] as number) -
      (effects.of[cells.taster[row] as number] ?? 0)
    if (count[u] === 1) {
      facts.level[u] = cells.level[row] as number
      facts.session[u] = cells.session[row] as number
      facts.flight[u] = cells.flight[row] as number
      facts.handled[u] = cells.handled[row] ?? null
    }
  }
  return {
    y: sums.map((sum, u) => sum / (count[u] as number)),
    ...facts,
    group: effects.group,
  }
}

function emptyFacts(units: number) {
  return {
    level: new Array<number>(units).fill(0),
    session: new Array<number>(units).fill(0),
    flight: new Array<number>(units).fill(0),
    handled: new Array<number | null>(units).fill(null),
  }
}

/** Effect of each taster, centred over the tasters of their group, and the group of each unit. */
function tasterEffects(cells: Cells, unit: readonly number[], units: number) {
  const tasters = cells.tasters.length
  const of = new Array<number>(tasters).fill(0)
  const group = groupsOf(cells, unit, units)
  if (tasters < 2 || isBalanced(cells, unit, group.ofUnit, group.count))
    return { of, group: group.ofUnit }
  const members: number[][] = Array.from({ length: group.count }, () => [])
  for (const [taster, at] of group.ofTaster.entries()) members[at]?.push(taster)
  const rowsOf: number[][] = Array.from({ length: group.count }, () => [])
  for (const [row, u] of unit.entries()) rowsOf[group.ofUnit[u] as number]?.push(row)
  for (const [at, crew] of members.entries()) {
    if (crew.length < 2) continue
    const fitted = fitCrew(cells, unit, rowsOf[at] as number[], crew)
    const mean = fitted.reduce((sum, effect) => sum + effect, 0) / crew.length
    for (const [index, taster] of crew.entries()) of[taster] = (fitted[index] as number) - mean
  }
  return { of, group: group.ofUnit }
}

/** Least squares of y ~ unit + taster within one group, the first taster at 0; the units are swept out, not given columns. */
function fitCrew(
  cells: Cells,
  unit: readonly number[],
  rows: readonly number[],
  crew: readonly number[],
): number[] {
  const blocks = new Map<number, number>()
  const block = Int32Array.from(rows, (row) => {
    const u = unit[row] as number
    const known = blocks.get(u) ?? blocks.size
    blocks.set(u, known)
    return known
  })
  const columns = crew
    .slice(1)
    .map((taster) => Float64Array.from(rows, (row) => (cells.taster[row] === taster ? 1 : 0)))
  const y = Float64Array.from(rows, (row) => cells.y[row] as number)
  const weight = new Float64Array(rows.length).fill(1)
  const result = blockedLeastSquares({ y, block, blockCount: blocks.size, weight }, columns)
  if (!result.ok) throw new Error('tasters of one group are linked by units')
  return [0, ...result.fit.coefficients]
}

/** Groups of units and tasters linked by a chain of scores (union and find); without tasters all units are one group. */
function groupsOf(cells: Cells, unit: readonly number[], units: number) {
  if (cells.tasters.length === 0) {
    return { ofUnit: new Array<number>(units).fill(0), ofTaster: [], count: 1 }
  }
  const parent = Array.from({ length: units + cells.tasters.length }, (_, node) => node)
  const root = (node: number): number => {
    let at = node
    while (parent[at] !== at) {
      parent[at] = parent[parent[at] as number] as number
      at = parent[at] as number
    }
    return at
  }
  for (const [row, u] of unit.entries()) {
    const taster = cells.taster[row] as number
    if (taster >= 0) parent[root(u)] = root(units + taster)
  }
  const numbers = new Map<number, number>()
  const groupOf = (node: number) => {
    const top = root(node)
    const known = numbers.get(top) ?? numbers.size
    numbers.set(top, known)
    return known
  }
  const ofUnit = Array.from({ length: units }, (_, u) => groupOf(u))
  const ofTaster = cells.tasters.map((_, taster) => groupOf(units + taster))
  return { ofUnit, ofTaster, count: numbers.size }
}

/** True when within every group each taster scored each unit equally often. */
function isBalanced(
  cells: Cells,
  unit: readonly number[],
  groupOfUnit: readonly number[],
  groups: number,
) {
  const tasters = cells.tasters.length
  const counts = new Map<number, number>()
  for (const [row, u] of unit.entries()) {
    const key = u * tasters + (cells.taster[row] as number)
    counts.set(key, (counts.get(key) ?? 0) + 1)
  }
  const crews = Array.from({ length: groups }, () => new Set<number>())
  const unitsIn = new Array<number>(groups).fill(0)
  const filled = new Array<number>(groups).fill(0)
  const each = new Array<number>(groups).fill(0)
  for (const at of groupOfUnit) unitsIn[at] = (unitsIn[at] as number) + 1
  for (const [key, n] of counts) {
    const at = groupOfUnit[Math.floor(key / tasters)] as number
    crews[at]?.add(key % tasters)
    filled[at] = (filled[at] as number) + 1
    if (each[at] === 0) each[at] = n
    else if (each[at] !== n) return false
  }
  return crews.every((crew, at) => crew.size * (unitsIn[at] as number) === filled[at])
}
