import { blockedLeastSquares } from '@/core/statistics/least-squares/blocked-least-squares.ts'
import { indicator } from '@/core/statistics/least-squares/indicator.ts'
import { gatherPatterns } from './patterns.ts'
import type { TwoWayCells } from './two-way-cells.ts'

/** Mean of each block at the average column, and of each column at the average block, all of one kind counting the same. */
export type TwoWayMeans = { blocks: Float64Array; columns: Float64Array }

/**
 * Marginal means of both sides of y ~ block + column by least squares weighted with the rows of each cell. Blocks are swept
 * out and columns fitted, so the side with more members is best handed in as the blocks. Where every cell is filled
 * equally often these are plain means.
 */
export function twoWayMeans(cells: TwoWayCells): TwoWayMeans {
  const { y, block, column, blockCount, columnCount } = cells
  const isComplete =
    y.length === blockCount * columnCount &&
    cells.weight.every((weight) => weight === cells.weight[0])
  if (isComplete) {
    return {
      blocks: meansBy(block, y, cells.weight, blockCount),
      columns: meansBy(column, y, cells.weight, columnCount),
    }
  }
  const effects = columnEffects(cells)
  const rest = y.map((value, i) => value - (effects[column[i] as number] as number))
  const blocks = meansBy(block, rest, cells.weight, blockCount)
  const whole = blocks.reduce((sum, value) => sum + value / blockCount, 0)
  return { blocks, columns: effects.map((effect) => whole + effect) }
}

/** How far each column lies from the average column, blocks swept out. */
function columnEffects(cells: TwoWayCells): Float64Array {
  const together = gatherPatterns(cells)
  const others = Array.from({ length: cells.columnCount - 1 }, (_, j) =>
    indicator(together.column, j + 1),
  )
  const result = blockedLeastSquares(together, others)
  if (!result.ok) throw new Error('linked columns must have independent effects')
  const effects = Float64Array.of(0, ...result.fit.coefficients)
  const average = effects.reduce((sum, effect) => sum + effect / effects.length, 0)
  return effects.map((effect) => effect - average)
}

function meansBy(codes: Int32Array, y: Float64Array, weight: Float64Array, count: number) {
  const sums = new Float64Array(count)
  const weights = new Float64Array(count)
  for (let i = 0; i < y.length; i += 1) {
    const code = codes[i] as number
    const w = weight[i] as number
    sums[code] = (sums[code] as number) + w * (y[i] as number)
    weights[code] = (weights[code] as number) + w
  }
  return sums.map((sum, code) => sum / (weights[code] as number))
}
