import { orderBalance } from '@/core/design/order-balance.ts'
import type { FairnessItem, LevelAmount } from '@/core/fairness/fairness-item.ts'
import type { LoggedSession } from '@/core/fairness/logged-sessions.ts'
import { bakes } from '@/core/session/bakes.ts'
import { pieceMeasures } from '@/core/session/piece-measures.ts'
import { minutesSinceOven } from '@/core/session/serving-age.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { apartPercent, meanOf } from './ends-of.ts'
import { madeItem } from './made-item.ts'
import { spreadOf } from './warmth-items.ts'

const timeFactors: readonly string[] = ['rest-time', 'proof-time', 'cold-hours']

/**
 * Ages as logged, as means of each level: from the mix to the oven (where time is not the factor itself), and from the oven to
 * the moment a ballot was begun; and how unequally often, as baked, one level came directly after another.
 */
export function loggedAgeItems(
  logged: readonly LoggedSession[],
  ballots: WholeTrial['ballots'],
): FairnessItem[] {
  return [...bakedItem(logged), ...eatenItem(logged, ballots), ...beforeItem(logged)]
}

function bakedItem(logged: readonly LoggedSession[]): FairnessItem[] {
  const plan = logged.at(-1)?.plan
  if (!plan || timeFactors.includes(plan.factor.acts.on)) return []
  const rows = logged.flatMap(({ session, plan: own, effective }) => {
    const counted = new Set(
      session.pieces.flatMap(({ id, role }) => (role === 'counted' ? [id] : [])),
    )
    return pieceMeasures(session, own, effective).flatMap((piece): LevelAmount[] =>
      piece.ageAtBakingSeconds === null || !counted.has(piece.pieceId)
        ? []
        : [{ levelId: piece.levelId, value: piece.ageAtBakingSeconds / 60 }],
    )
  })
  const spread = spreadOf(rows)
  if (!spread) return []
  const { perLevel, ...ends } = spread
  const size = ((ends.high - ends.low) / meanOf(rows.map(({ value }) => value))) * 100
  const data = { pieces: rows.length, ...ends }
  return [madeItem('age-baked', { size, data, perLevel, when: 'after', path: '' })]
}

function eatenItem(
  logged: readonly LoggedSession[],
  ballots: WholeTrial['ballots'],
): FairnessItem[] {
  const rows = logged.flatMap(({ session, effective }) => {
    const servings = new Map(session.dealt.servings.map((serving) => [serving.id, serving.pieceId]))
    const pieces = new Map(session.pieces.map((piece) => [piece.id, piece]))
    return effectiveBallots(ballots, session.id).flatMap(({ about, startedAt }): LevelAmount[] => {
      const piece = pieces.get(servings.get(about.id) ?? '')
      if (piece?.role !== 'counted' || startedAt === undefined) return []
      const minutes = minutesSinceOven(effective, piece.id, startedAt)
      return minutes === null ? [] : [{ levelId: piece.levelId, value: minutes }]
    })
  })
  const spread = spreadOf(rows)
  const serving = logged.at(-1)?.plan.serving
  if (!spread) return []
  const { perLevel, ...ends } = spread
  const found = { data: { servings: rows.length, ...ends }, perLevel, path: '' }
  if (serving === 'as-baked') {
    const size = ends.high - ends.low
    return [madeItem('mouth-minutes', { ...found, size, when: 'after' })]
  }
  const remedies = [{ code: 'taste-timed' as const }]
  const size = apartPercent(ends)
  return [madeItem('age-tasted', { ...found, size, remedies, when: 'after' })]
}

function beforeItem(logged: readonly LoggedSession[]): FairnessItem[] {
  const plan = logged.at(-1)?.plan
  if (plan?.serving !== 'as-baked' || plan.placesPerLoad > 1) return []
  const ids = plan.levels.map(({ id }) => id)
  const orders = logged.flatMap(({ session, effective }) => {
    const baked = new Map(bakes(session, effective).map((bake) => [bake.pieceId, bake.inAt]))
    return session.dealt.flights.map(({ pieceIds }) =>
      pieceIds
        .flatMap((id) => {
          const inAt = baked.get(id) ?? null
          const level = ids.indexOf(session.pieces.find((one) => one.id === id)?.levelId ?? '')
          return inAt === null || level < 0 ? [] : [{ inAt, level }]
        })
        .toSorted((a, b) => a.inAt - b.inAt)
        .map(({ level }) => level),
    )
  })
  if (ids.length < 3 || orders.every((order) => order.length < 2)) return []
  const { leastBefore: low, mostBefore: high } = orderBalance(orders, ids.length)
  const found = { size: high - low, data: { low, high }, path: '' }
  return [madeItem('piece-before-done', { ...found, when: 'after' })]
}
