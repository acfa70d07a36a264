import type { Cells } from '@/core/statistics/block-model/cells.ts'
import { blockedLeastSquares } from '@/core/statistics/least-squares/blocked-least-squares.ts'
import { averageBlockValue } from '@/core/statistics/least-squares/combination.ts'
import { type Residual, residualOf } from '@/core/statistics/least-squares/residual.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'

/**
 * A line or curve through the levels, for the average block. It is fitted in x = (L − centre)/scale, which keeps every
 * digit; `coefficients` and `covariance` (constant, linear, quadratic) are in x, `raw` in the level's own unit.
 * `spread` is the largest value less the smallest, the measure for *numerically zero*.
 */
export type PolynomialFit = {
  degree: 1 | 2
  centre: number
  scale: number
  coefficients: number[]
  covariance: number[][]
  raw: { coefficients: number[]; se: number[] }
  residual: Residual
  spread: number
}

/**
 * Least squares of y ~ block + L (degree 1) or y ~ block + L + L² (degree 2), `levelValues` giving L for each level code;
 * the constant is that of the average block, every block counting the same.
 *
 * Refuses: `no-rows`, `one-level`, `needs-three-levels` for a curve over fewer values, `level-values-equal` when no block
 * holds enough different levels, and what `residualOf` refuses.
 *
 * @example fitPolynomial(gatherCells(hump), [0, 1, 2], 2) // {"ok": true, "coefficients": [6, 0.5, -3.5]} (the worked hump over −1 to 1, by hand)
 */
export function fitPolynomial(
  cells: Cells,
  levelValues: readonly number[],
  degree: 1 | 2,
): Answer<PolynomialFit> {
  if (cells.rowCount === 0) return refuse('no-rows')
  const values = Float64Array.from(cells.level, (level) => levelValues[level] as number)
  const distinct = new Set(values)
  if (distinct.size < 2) return refuse('one-level')
  if (degree === 2 && distinct.size < 3) return refuse('needs-three-levels')
  const lowest = Math.min(...distinct)
  const highest = Math.max(...distinct)
  const centre = lowest + (highest - lowest) / 2
  const scale = (highest - lowest) / 2
  const x = values.map((value) => (value - centre) / scale)
  const columns = degree === 1 ? [x] : [x, x.map((value) => value * value)]
  const result = blockedLeastSquares(cells, columns)
  if (!result.ok) return refuse('level-values-equal')
  const { fit } = result
  const df = cells.rowCount - fit.blockCount - degree
  const left = fit.residualSumOfSquares + cells.insideSumOfSquares
  const checked = residualOf(left, df, cells.lowest, cells.highest)
  if (!checked.ok) return checked
  const variance = checked.residual.sd ** 2
  const average = averageBlockValue(
    fit,
    columns.map(() => 0),
  )
  const means = fit.columnBlockMeans.map((perBlock) =>
    perBlock.reduce(
      (sum, mean, b) => sum + ((fit.blockWeights[b] as number) > 0 ? mean : 0) / fit.blockCount,
      0,
    ),
  )
  // Cov(constant, β) = −C·m, since the block part is independent of the coefficients.
  const cross = fit.unscaled.map(
    (row) => -means.reduce((sum, mean, j) => sum + mean * (row[j] as number), 0),
  )
  const unscaled = [
    [average.unscaledVariance, ...cross],
    ...fit.unscaled.map((row, i) => [cross[i] as number, ...row]),
  ]
  const coefficients = [cells.origin + average.estimate, ...fit.coefficients]
  const covariance = unscaled.map((row) => row.map((value) => value * variance))
  return {
    ok: true,
    degree,
    centre,
    scale,
    coefficients,
    covariance,
    raw: inRawLevels(coefficients, covariance, centre, scale),
    residual: checked.residual,
    spread: cells.highest - cells.lowest,
  }
}

/** The same polynomial in L itself: with x = (L − m)/s, 1, x and x² are combinations of 1, L and L². */
function inRawLevels(
  coefficients: readonly number[],
  covariance: readonly (readonly number[])[],
  centre: number,
  scale: number,
) {
  const shift = centre / scale
  const transform = [
    [1, -shift, shift * shift],
    [0, 1 / scale, (-2 * shift) / scale],
    [0, 0, 1 / scale ** 2],
  ]
  const n = coefficients.length
  const rows = transform.slice(0, n).map((row) => row.slice(0, n))
  return {
    coefficients: rows.map((row) =>
      row.reduce((sum, value, j) => sum + value * (coefficients[j] as number), 0),
    ),
    se: rows.map((row) => Math.sqrt(quadraticForm(row, covariance))),
  }
}

/** vᵀCv of a covariance: a variance, not below 0 by rounding. */
export function quadraticForm(
  vector: readonly number[],
  matrix: readonly (readonly number[])[],
): number {
  let sum = 0
  for (const [i, value] of vector.entries()) {
    for (const [j, other] of vector.entries()) {
      sum += value * other * (matrix[i]?.[j] as number)
    }
  }
  return Math.max(0, sum)
}
