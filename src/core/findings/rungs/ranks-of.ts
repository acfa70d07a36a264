import { type Absent, absent } from '@/core/findings/reason.ts'
import type { Page, Ranks } from '@/core/findings/response-findings-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { friedman } from '@/core/statistics/ranks/friedman.ts'
import { leastRankDifference } from '@/core/statistics/ranks/least-rank-difference.ts'
import { page } from '@/core/statistics/ranks/page.ts'
import { type RankedBlocks, rankBlocks } from '@/core/statistics/ranks/rank-blocks.ts'
import type { Expectation } from '@/core/trial/expectation.ts'
import type { LevelId } from './rung-shape.ts'
import type { TasterMeans } from './taster-means.ts'

/**
 * Ranks beside the means: Friedman with ties and Kendall's W on taster by level means, the least difference of rank
 * sums only after a significant Friedman, and Page's L for rising levels, one-sided when a direction was expected. Levels
 * nobody scored are left out; tasters with an empty cell are left out and counted. One taster left to rank agrees with
 * nobody: that says nothing of agreement (W would be 1 by its formula), so it is refused like one taster alone.
 */
export function ranksOf(
  scores: ScoreTable,
  means: TasterMeans,
  direction: Expectation['direction'] | null,
): Ranks | Absent {
  if (means.length === 0) return absent('needs-two-tasters')
  if (means.length < 2) return { reason: 'needs-two-tasters', tasters: 2 }
  const index = scores.levels
    .map((_, level) => level)
    .filter((level) => means.some((row) => row[level] !== null))
  const ranked = rankBlocks(means.map((row) => index.map((level) => row[level] ?? null)))
  if (ranked.blocks.length === 1)
    return { reason: 'needs-two-tasters', tasters: ranked.leftOut + 2 }
  const found = friedman(ranked)
  if (!found.ok) return absent(found.reason)
  return {
    chiSquare: found.chiSquare,
    df: found.df,
    p: found.p,
    kendallW: found.kendallW,
    rankSums: found.rankSums.map((sum, at) => ({
      level: scores.levels[index[at] as number]?.id as LevelId,
      sum,
    })),
    leastDifference: found.p < 0.05 ? leastRankDifference(ranked) : absent('not-significant'),
    leftOut: found.leftOut,
    page: scores.factor.ordered ? pageOf(ranked, direction) : absent('choice-factor'),
  }
}

function pageOf(ranked: RankedBlocks, expected: Expectation['direction'] | null): Page | Absent {
  const direction = expected === 'rises' ? 'rising' : expected === 'falls' ? 'falling' : 'two-sided'
  const found = page(ranked, direction)
  if (!found.ok) return absent(found.reason)
  return { l: found.l, p: found.p, method: found.method, direction: found.direction }
}
