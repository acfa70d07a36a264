import { chiSquareTails } from '@/core/statistics/distributions/chi-square.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import { type RankedBlocks, rankSumsOf } from './rank-blocks.ts'

export type Friedman = {
  chiSquare: number
  df: number
  p: number
  kendallW: number
  rankSums: number[]
  blocks: number
  leftOut: number
}

/**
 * Do tasters rank the levels alike? Friedman's chi-square with the correction for ties, its p from chi-square with k − 1
 * degrees of freedom, and Kendall's W = chi-square / (n·(k − 1)), both for n blocks and k levels
 * (formulas of the textbook; with ties F′ = F/(1 − Σ(t³−t)/(n·k·(k²−1)))).
 *
 * Refuses `one-level`, `no-complete-block`, and `all-equal` when every block ties all its levels.
 *
 * @example friedman(rankBlocks([[1, 2, 3], [1, 2, 3], [1, 2, 3]])) // {"chiSquare": 6, "kendallW": 1} (by hand: all agree, n(k-1))
 */
export function friedman(ranked: RankedBlocks): Answer<Friedman> {
  const { blocks, levelCount: k, leftOut } = ranked
  const n = blocks.length
  if (k < 2) return refuse('one-level')
  if (n === 0) return refuse('no-complete-block')
  const rankSums = rankSumsOf(ranked)
  const tieTerm = blocks.reduce((sum, block) => sum + block.tieTerm, 0)
  const untied = n * k * (k * k - 1) - tieTerm
  if (untied === 0) return refuse('all-equal')
  const centre = (n * (k + 1)) / 2
  const squares = rankSums.reduce((sum, total) => sum + (total - centre) ** 2, 0)
  const chiSquare = (12 * squares * (k - 1)) / untied
  const df = k - 1
  return {
    ok: true,
    chiSquare,
    df,
    p: chiSquareTails(chiSquare, df).upper,
    kendallW: chiSquare / (n * df),
    rankSums,
    blocks: n,
    leftOut,
  }
}
