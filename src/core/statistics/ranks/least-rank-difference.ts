import { normalQuantile } from '@/core/statistics/distributions/normal.ts'
import type { RankedBlocks } from './rank-blocks.ts'

/**
 * The smallest difference between two levels' rank sums that counts, after a significant Friedman test (ISO 8587:
 * z·√(n·k·(k+1)/6), for instance 1.96; seen second-hand). With ties n·k·(k+1) is lessened by Σ(t³−t)/(k−1), which is what
 * the variance of a rank-sum difference loses. Two-sided at `confidence`; 0 when every block ties all its levels.
 *
 * @example leastRankDifference(rankBlocks([[1, 2, 3], [2, 1, 3], [3, 1, 2], [1, 2, 3]])) // 5.54 (1.96·√8)
 */
export function leastRankDifference(ranked: RankedBlocks, confidence = 0.95): number {
  const { blocks, levelCount: k } = ranked
  const tieTerm = blocks.reduce((sum, block) => sum + block.tieTerm, 0)
  const z = -normalQuantile((1 - confidence) / 2)
  return z * Math.sqrt((blocks.length * k * (k + 1) - tieTerm / (k - 1)) / 6)
}
