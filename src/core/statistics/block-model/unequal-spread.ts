import { quantileOfSorted } from '@/core/statistics/description/describe.ts'
import { fTails } from '@/core/statistics/distributions/f.ts'
import { tHalfWidth, tTwoSidedP } from '@/core/statistics/distributions/students-t.ts'
import type { PairOfLevels } from './all-pairs.ts'
import type { LevelFit } from './level-fit.ts'
import type { LevelRows } from './rows.ts'

/** How unequally the levels scatter once blocks and levels are allowed for: p, and the levels with most and least scatter. */
export type UnequalSpread = { p: number; widest: number; calmest: number }

/**
 * Do the levels scatter alike? What y ~ block + factor(level) leaves over, as distances from each level's median, compared by a one-way F
 * (after Brown & Forsythe 1974; from memory). Null with fewer than three values at a level.
 *
 * @example unequalSpread(rows, fit) // null (the worked table has two values a level)
 */
export function unequalSpread(
  { y, block, level, levelCount }: LevelRows,
  { fit, origin }: LevelFit,
): UnequalSpread | null {
  const left = Array.from({ length: levelCount }, (): number[] => [])
  for (let row = 0; row < y.length; row += 1) {
    const [b, own] = [block[row] as number, level[row] as number]
    let fitted = fit.blockMeans[b] as number
    for (let j = 0; j < fit.coefficients.length; j += 1) {
      const has = own === j + 1 ? 1 : 0
      fitted += (fit.coefficients[j] as number) * (has - (fit.columnBlockMeans[j]?.[b] as number))
    }
    left[own]?.push((y[row] as number) - origin - fitted)
  }
  if (left.some((values) => values.length < 3)) return null
  const away = left.map((values) => {
    const middle = quantileOfSorted(Float64Array.from(values).sort(), 0.5) ?? 0
    return values.map((value) => Math.abs(value - middle))
  })
  const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one / of.length, 0)
  const means = away.map(mean)
  const all = mean(away.flat())
  const between = away.reduce((sum, of, at) => sum + of.length * ((means[at] ?? 0) - all) ** 2, 0)
  const within = away.reduce(
    (sum, of, at) => sum + of.reduce((part, one) => part + (one - (means[at] ?? 0)) ** 2, 0),
    0,
  )
  const [df1, df2] = [levelCount - 1, y.length - levelCount]
  if (!(within > 0) || df2 < 1) return null
  return {
    p: fTails(between / df1 / (within / df2), df1, df2).upper,
    widest: means.indexOf(Math.max(...means)),
    calmest: means.indexOf(Math.min(...means)),
  }
}

/**
 * All pairs, each by its own error: the mean of the differences within the blocks that had both, its error from how these differ, and
 * simultaneous limits and p by Student's t with that pair's own degrees of freedom, times the number of pairs (Bonferroni): the studentized
 * range needs one error for all, and with each pair's own calls a difference in 8 of 100 (six blocks, simulated). A pair of fewer than three common blocks, or without scatter, stays as it was.
 *
 * @example pairsByOwnError(rows, allPairs(fit)) // [{"difference": 2}, {"difference": 4}, {"difference": 2}] (two common blocks: as they were)
 */
export function pairsByOwnError(
  rows: LevelRows,
  pairs: readonly PairOfLevels[],
  confidence = 0.95,
): PairOfLevels[] {
  const table = Array.from({ length: rows.blockCount }, () => new Map<number, number>())
  for (let row = 0; row < rows.y.length; row += 1)
    table[rows.block[row] as number]?.set(rows.level[row] as number, rows.y[row] as number)
  return pairs.map((pair) => {
    const differences = table.flatMap((block) => {
      const [a, b] = [block.get(pair.a), block.get(pair.b)]
      return a === undefined || b === undefined ? [] : [b - a]
    })
    const n = differences.length
    const difference = differences.reduce((sum, one) => sum + one / n, 0)
    const squares = differences.reduce((sum, one) => sum + (one - difference) ** 2, 0)
    const se = Math.sqrt(squares / (n - 1) / n)
    if (n < 3 || !(se > 1e-12 * Math.max(1, Math.abs(difference)))) return pair
    const df = n - 1
    const half = tHalfWidth(1 - (1 - confidence) / pairs.length, df) * se
    const p = Math.min(1, pairs.length * tTwoSidedP(difference / se, df))
    return { ...pair, difference, se, low: difference - half, high: difference + half, p }
  })
}
