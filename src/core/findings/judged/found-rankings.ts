import type { FoundRanking } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { ranksOf } from '@/core/findings/rungs/ranks-of.ts'
import type { GivenOrder, ScoreTable, TrialRanking } from '@/core/findings/table/score-table.ts'

/**
 * What the orders of the tasters show: how far each level stands to the front, and Friedman's test with ties, a block a taster, which
 * counts once however many sessions they ranked in (the mean of their ranks). An order that lacks a level which others had is not
 * counted; a taster without a whole one is left out and counted. Rank sums are small where a level comes early.
 */
export function foundRankings(scores: ScoreTable): FoundRanking[] {
  return (scores.rankings ?? []).map((ranking) => foundRanking(scores, ranking))
}

function foundRanking(scores: ScoreTable, ranking: TrialRanking): FoundRanking {
  const { orders, ties, asks = null, knowing } = ranking
  const had = scores.levels.flatMap((_, level) =>
    orders.some(({ ranks }) => isNumber(ranks[level])) ? [level] : [],
  )
  const whole = orders.filter(({ ranks }) => had.every((level) => isNumber(ranks[level])))
  const tasters = [...new Set(orders.map(({ tasterId }) => tasterId))]
  const means = tasters.map((taster) =>
    meanRanks(
      whole.filter(({ tasterId }) => tasterId === taster),
      scores.levels.length,
    ),
  )
  const found = ranksOf(scores, means, null)
  return {
    ...{ asks, ties, knowing, orders: whole.length },
    tasters: new Set(whole.map(({ tasterId }) => tasterId)).size,
    sessions: new Set(whole.map(({ sessionId }) => sessionId)).size,
    leftOut: orders.length - whole.length,
    levels: had.flatMap((level) => {
      const id = scores.levels[level]?.id
      const ranks = whole.map((order) => order.ranks[level] ?? Number.NaN)
      if (id === undefined || whole.length === 0) return []
      const first = whole.filter(
        (order, at) => ranks[at] === Math.min(...order.ranks.filter(isNumber)),
      ).length
      return [
        { level: id, place: ranks.reduce((sum, rank) => sum + rank, 0) / ranks.length, first },
      ]
    }),
    ranks: isPresent(found) ? withoutPage(found) : found,
  }
}

/** Whether places rise along the levels is asked of scores, where a direction was written first; not of an order. */
function withoutPage({
  page: _,
  ...ranks
}: Exclude<ReturnType<typeof ranksOf>, { reason: unknown }>) {
  return ranks
}

function meanRanks(orders: readonly GivenOrder[], levelCount: number): (number | null)[] {
  return Array.from({ length: levelCount }, (_, level) => {
    const ranks = orders.map((order) => order.ranks[level]).filter(isNumber)
    return ranks.length === 0 ? null : ranks.reduce((sum, rank) => sum + rank, 0) / ranks.length
  })
}

const isNumber = (value: number | null | undefined): value is number => typeof value === 'number'
