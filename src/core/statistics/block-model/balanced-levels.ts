import type { ComparedLevels } from './level-difference.ts'

/**
 * A complete table, a row for each block and a column for each level, compared without fitting: y ~ block + factor(level) with
 * differences of column means, residual mean square of what rows and columns leave, (t − 1)(S − 1) degrees of freedom. Two rows and
 * two columns at least.
 *
 * @example balancedLevels([[1, 2], [2, 5]]).fit.coefficients // [2] (by hand: column means 1.5 and 3.5)
 */
export function balancedLevels(table: readonly (readonly number[])[]): ComparedLevels {
  const blocks = table.length
  const levels = table[0]?.length ?? 0
  const means = Array.from({ length: levels }, (_, level) =>
    table.reduce((sum, row) => sum + (row[level] as number) / blocks, 0),
  )
  const grand = means.reduce((sum, mean) => sum + mean / levels, 0)
  let left = 0
  for (const row of table) {
    const own = row.reduce((sum, value) => sum + value / levels, 0)
    for (const [level, value] of row.entries())
      left += (value - own - (means[level] as number) + grand) ** 2
  }
  const df2 = (levels - 1) * (blocks - 1)
  const others = Array.from({ length: levels - 1 }, (_, at) => at)
  return {
    ...{ levelCount: levels, df2, covariateMeans: [] },
    residualSd: Math.sqrt(left / df2),
    fit: {
      coefficients: Float64Array.from(others, (at) => (means[at + 1] ?? 0) - (means[0] ?? 0)),
      unscaled: others.map((a) => Float64Array.from(others, (b) => (a === b ? 2 : 1) / blocks)),
    },
  }
}
