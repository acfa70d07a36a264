import { triangularFactor } from '@/core/statistics/least-squares/triangular-factor.ts'
import type { Cells } from './cells.ts'
import type { LevelRows } from './rows.ts'

/**
 * Cells with covariates: `columns` are the covariates' cell means; `inside` are the few rows that stand for all scatter
 * inside the cells, one entry for each covariate and one for the response.
 */
export type CovariateCells = { cells: Cells; columns: Float64Array[]; inside: number[][] }

/**
 * Rows with covariates, gathered into `cells` without loss: what blocks and levels cannot see, the deviations from cell means, is
 * reduced to the triangle of its own QR decomposition. A fit of the cells with those rows added is the fit of all rows.
 *
 * A covariate without one finite value for each row is a programmer's mistake and throws.
 */
export function covariateCells(
  rows: LevelRows,
  cells: Cells,
  covariates: readonly ArrayLike<number>[],
): CovariateCells {
  const parts = covariates.map((values) => {
    if (values.length !== rows.y.length)
      throw new RangeError('a covariate needs one value for each row')
    return splitByCell(values, cells.ofRow, cells.weight)
  })
  const response = splitByCell(rows.y, cells.ofRow, cells.weight)
  return {
    cells: { ...cells, insideSumOfSquares: 0 },
    columns: parts.map(({ means }) => means),
    inside: triangularFactor([...parts.map(({ rest }) => rest), response.rest]),
  }
}

/** A column's cell means and what is left of each row, counted from the column's first value. */
function splitByCell(values: ArrayLike<number>, cellOf: Int32Array, weight: Float64Array) {
  const origin = values[0] ?? 0
  const rest = new Float64Array(values.length)
  const means = new Float64Array(weight.length)
  const sums = new Float64Array(weight.length)
  for (let i = 0; i < values.length; i += 1) {
    if (!Number.isFinite(values[i])) throw new RangeError(`row ${i} has no finite covariate`)
    rest[i] = (values[i] as number) - origin
  }
  for (let pass = 0; pass < 2; pass += 1) {
    sums.fill(0)
    for (let i = 0; i < rest.length; i += 1) {
      const cell = cellOf[i] as number
      sums[cell] = (sums[cell] as number) + (rest[i] as number)
    }
    for (let cell = 0; cell < sums.length; cell += 1) {
      sums[cell] = (sums[cell] as number) / (weight[cell] as number)
      means[cell] = (means[cell] as number) + (sums[cell] as number)
    }
    for (let i = 0; i < rest.length; i += 1) {
      rest[i] = (rest[i] as number) - (sums[cellOf[i] as number] as number)
    }
  }
  return { means, rest }
}
