import { connectedGroups } from './connected-groups.ts'

/** The slope of y ~ block + unit + x with its standard error and the degrees of freedom that are left. */
export type SlopeWithin = { slope: number; se: number; df: number }

const most = 500
const settled = 1e-13

/**
 * The slope of y on x when blocks and units are both taken out, from what varies inside both alone: for instance minutes inside
 * a piece, whoever tasted. Both ways are swept in turn until nothing moves (alternating projections; one round where the table is
 * complete). Null where nothing of x is left (less than 1e-9 of its spread) or no degree of freedom.
 *
 * @example slopeWithin([0, 1, 4, 10, 13, 12], [0, 0, 1, 0, 1, 0], Int32Array.of(0, 0, 0, 1, 1, 1), Int32Array.of(0, 1, 2, 0, 1, 2), { blocks: 2, units: 3 }) // {"slope": 2, "df": 1} (y is 10·block + unit + 2x)
 */
export function slopeWithin(
  y: ArrayLike<number>,
  x: ArrayLike<number>,
  block: Int32Array,
  unit: Int32Array,
  counts: { blocks: number; units: number },
): SlopeWithin | null {
  const linked = { block, level: unit, blockCount: counts.blocks, levelCount: counts.units }
  const { ofBlock, ofLevel, count } = connectedGroups(linked)
  const used = (groups: Int32Array) => groups.reduce((sum, group) => sum + (group < 0 ? 0 : 1), 0)
  const df = y.length - used(ofBlock) - used(ofLevel) + count - 1
  if (df < 1) return null
  const ways = [
    { codes: block, size: counts.blocks },
    { codes: unit, size: counts.units },
  ]
  const left = swept(Float64Array.from(y), ways)
  const moved = swept(Float64Array.from(x), ways)
  const spread = squares(centred(Float64Array.from(x)))
  const inside = squares(moved)
  if (!(inside > 1e-9 * spread) || spread === 0) return null
  let cross = 0
  for (let i = 0; i < left.length; i += 1) cross += (left[i] as number) * (moved[i] as number)
  const slope = cross / inside
  const residual = Math.max(0, squares(left) - slope * cross)
  return { slope, se: Math.sqrt(residual / df / inside), df }
}

function swept(
  column: Float64Array,
  ways: readonly { codes: Int32Array; size: number }[],
): Float64Array {
  const size = Math.sqrt(squares(centred(Float64Array.from(column)))) || 1
  for (let round = 0; round < most; round += 1) {
    let moved = 0
    for (const { codes, size: parts } of ways)
      moved = Math.max(moved, takeMeans(column, codes, parts))
    if (moved <= settled * size) break
  }
  return column
}

/** Takes each part's mean out of a column in place; answers the largest mean that was taken. */
function takeMeans(column: Float64Array, codes: Int32Array, parts: number): number {
  const sums = new Float64Array(parts)
  const counts = new Int32Array(parts)
  for (let i = 0; i < column.length; i += 1) {
    const code = codes[i] as number
    sums[code] = (sums[code] as number) + (column[i] as number)
    counts[code] = (counts[code] as number) + 1
  }
  let largest = 0
  for (let code = 0; code < parts; code += 1) {
    if (counts[code] === 0) continue
    sums[code] = (sums[code] as number) / (counts[code] as number)
    largest = Math.max(largest, Math.abs(sums[code] as number))
  }
  for (let i = 0; i < column.length; i += 1)
    column[i] = (column[i] as number) - (sums[codes[i] as number] as number)
  return largest
}

function centred(column: Float64Array): Float64Array {
  const mean = column.reduce((sum, value) => sum + value, 0) / column.length
  return column.map((value) => value - mean)
}

function squares(column: Float64Array): number {
  let sum = 0
  for (let i = 0; i < column.length; i += 1) sum += (column[i] as number) ** 2
  return sum
}
