import type { TrialLevels } from '@/core/findings/table/levels-of-trial.ts'
import type { TrialRanking } from '@/core/findings/table/score-table.ts'
import { placesOf, type Ranked } from '@/core/seal/blind/ranked-codes.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import { midranks } from '@/core/statistics/ranks/midranks.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { tastersOfSession } from '@/core/tasting/tasters-of-session.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/**
 * The orders in which blind tasters put the samples, by question: asked in other words it is another one. A level served more than
 * once stands at the mean of its places, and the levels are ranked anew by it, so that every order counts from 1 up.
 */
export function rankingsOfTrial(whole: WholeTrial, levels: TrialLevels): TrialRanking[] {
  const found = new Map<string, TrialRanking>()
  for (const session of whole.sessions) {
    const plan = planOfSession(whole, session)
    const asked = plan.atTable?.ranking
    if (!asked) continue
    const ballots = effectiveBallots(whole.ballots, session.id)
    const people = tastersOfSession(
      session,
      plan,
      eventsOfSession(whole.events, session.id),
      ballots,
    )
    const knows = new Set(people.flatMap(({ tasterId, knows }) => (knows ? [tasterId] : [])))
    const key = `${asked.asks ?? ''} ${asked.ties}`
    const ranking = found.get(key) ?? { ...asked, orders: [], knowing: 0 }
    found.set(key, ranking)
    for (const { about, tasterId, ranked } of ballots) {
      if (about.kind !== 'ranking' || ranked === undefined) continue
      if (knows.has(tasterId)) ranking.knowing += 1
      else
        ranking.orders.push({
          ...{ tasterId, sessionId: session.id },
          ranks: ranksOfLevels(ranked, session, levels),
        })
    }
  }
  return [...found.values()].filter(({ orders, knowing }) => orders.length + knowing > 0)
}

function ranksOfLevels(ranked: Ranked, session: Session, levels: TrialLevels): (number | null)[] {
  const places = levels.list.map((): number[] => [])
  for (const [code, place] of placesOf(ranked)) {
    const pieceId = session.dealt.servings.find((serving) => serving.code === code)?.pieceId
    const levelId = session.pieces.find(({ id }) => id === pieceId)?.levelId
    if (levelId !== undefined) places[levels.indexOf(levelId, session.id)]?.push(place)
  }
  const had = places.flatMap((own, level) => (own.length > 0 ? [level] : []))
  const { ranks } = midranks(had.map((level) => meanOf(places[level] ?? [])))
  return places.map((_, level) => ranks[had.indexOf(level)] ?? null)
}

const meanOf = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length
