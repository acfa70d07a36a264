import { triangularFactor } from './triangular-factor.ts'
import { type BlockedRows, blockWeights, sweepBlocks } from './within-blocks.ts'

/**
 * A fit of y ~ block + columns. `unscaled` times the residual variance is the covariance of the coefficients;
 * `sequential` is the sum of squares that each column adds to the blocks and the columns before it;
 * `blockMeans` are of the response, `columnBlockMeans` of each column.
 */
export type BlockedFit = {
  coefficients: Float64Array
  unscaled: Float64Array[]
  sequential: Float64Array
  residualSumOfSquares: number
  blockCount: number
  blockWeights: Float64Array
  blockMeans: Float64Array
  columnBlockMeans: Float64Array[]
}

export type BlockedResult = { ok: true; fit: BlockedFit } | { ok: false; dependent: number }

const dependentBelow = 1e-9

/**
 * Least squares of a response on blocks and some columns, weighted by rows: blocks are swept out exactly, what is left is
 * decomposed by Householder QR; no normal equations. One block is plain regression with an intercept.
 *
 * When a column follows from the blocks and the columns before it (its part of R is below 1e-9 of its length), the answer
 * is the index of the first such column instead of a fit. `inside` are further rows that blocks do not touch, one entry for
 * each column and the response.
 *
 * @example blockedLeastSquares(cells, [indicator(cells.level, 1), indicator(cells.level, 2)]).fit.coefficients // [2, 4] (the worked table, by hand)
 */
export function blockedLeastSquares(
  rows: BlockedRows,
  columns: readonly Float64Array[],
  inside: readonly (readonly number[])[] = [],
): BlockedResult {
  const weights = blockWeights(rows)
  const swept = columns.map((column) => sweepBlocks(column, rows, weights))
  const response = sweepBlocks(rows.y, rows, weights)
  const whole = [...swept, response].map(({ column }, j) => withRows(column, inside, j))
  const r = triangularFactor(whole)
  const n = columns.length
  const at = (i: number, j: number) => r[i]?.[j] as number
  const dependent = swept.findIndex(
    ({ rawLength }, j) => Math.abs(at(j, j)) <= dependentBelow * rawLength,
  )
  if (dependent >= 0) return { ok: false, dependent }
  const inverse = invertTriangle(at, n)
  const projected = Float64Array.from({ length: n }, (_, i) => at(i, n))
  const coefficients = Float64Array.from(inverse, (row) =>
    row.reduce((sum, value, j) => sum + value * (projected[j] as number), 0),
  )
  const unscaled = inverse.map((row) =>
    Float64Array.from(inverse, (other) =>
      row.reduce((sum, value, j) => sum + value * (other[j] as number), 0),
    ),
  )
  return {
    ok: true,
    fit: {
      coefficients,
      unscaled,
      sequential: projected.map((value) => value * value),
      residualSumOfSquares: at(n, n) ** 2,
      blockCount: weights.reduce((count, weight) => count + (weight > 0 ? 1 : 0), 0),
      blockWeights: weights,
      blockMeans: response.blockMeans,
      columnBlockMeans: swept.map(({ blockMeans }) => blockMeans),
    },
  }
}

function withRows(
  column: Float64Array,
  rows: readonly (readonly number[])[],
  at: number,
): Float64Array {
  if (rows.length === 0) return column
  const longer = new Float64Array(column.length + rows.length)
  longer.set(column)
  for (const [i, row] of rows.entries()) longer[column.length + i] = row[at] as number
  return longer
}

/** Rows of the inverse of an upper triangle, by back substitution. */
function invertTriangle(at: (i: number, j: number) => number, n: number): Float64Array[] {
  const inverse = Array.from({ length: n }, () => new Float64Array(n))
  for (let j = 0; j < n; j += 1) {
    for (let i = j; i >= 0; i -= 1) {
      let rest = i === j ? 1 : 0
      for (let k = i + 1; k <= j; k += 1) rest -= at(i, k) * (inverse[k]?.[j] as number)
      ;(inverse[i] as Float64Array)[j] = rest / at(i, i)
    }
  }
  return inverse
}
