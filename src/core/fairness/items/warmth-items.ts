import { minutesApart, warmSeconds } from '@/core/dough-temperature/proof-minutes.ts'
import type { FairnessItem, LevelAmount } from '@/core/fairness/fairness-item.ts'
import type { LoggedSession } from '@/core/fairness/logged-sessions.ts'
import { bakes } from '@/core/session/bakes.ts'
import { doughsInWork } from '@/core/session/line.ts'
import { temperaturesOf } from '@/core/session/temperatures.ts'
import { endsOf, meansByLevel } from './ends-of.ts'
import { madeItem } from './made-item.ts'

/**
 * Temperatures as logged, as means of each level over the sessions: doughs out of the mixer (the first reading of each),
 * pieces, and the oven floor at the last reading before each launch.
 */
export function warmthItems(logged: readonly LoggedSession[]): FairnessItem[] {
  const doughs = logged.flatMap(({ session, effective }) =>
    doughsInWork(session).flatMap(({ id, levelId }): LevelAmount[] => {
      const [first] = temperaturesOf(effective, 'dough', id)
      return levelId !== null && first ? [{ levelId, value: first.celsius }] : []
    }),
  )
  const pieces = logged.flatMap(({ session, effective }) =>
    session.pieces.flatMap(({ id, levelId }): LevelAmount[] => {
      const [first] = temperaturesOf(effective, 'piece', id)
      return first ? [{ levelId, value: first.celsius }] : []
    }),
  )
  return [...doughItem(doughs, logged), ...pieceItem(pieces), ...floorItem(logged)]
}

function doughItem(rows: readonly LevelAmount[], logged: readonly LoggedSession[]): FairnessItem[] {
  const spread = spreadOf(rows)
  const plan = logged[0]?.plan
  if (!spread || !plan) return []
  const { perLevel, ...ends } = spread
  const middle = (ends.low + ends.high) / 2
  const seconds = warmSeconds(plan.steps)
  const { spreadMinutes: minutes, spreadMinutesEnds: minutesEnds } = minutesApart(seconds, middle, [
    ends.low,
    ends.high,
  ])
  return [
    madeItem('dough-warmth', {
      ...{
        size: ends.high - ends.low,
        data: { batches: rows.length, minutes, minutesEnds, ...ends },
      },
      ...{ perLevel, when: 'after', path: '/temperature' },
      remedies: [
        { code: plan.temperature?.matched === false ? 'match-water' : 'correct-water-by-reading' },
      ],
    }),
  ]
}

function pieceItem(rows: readonly LevelAmount[]): FairnessItem[] {
  const spread = spreadOf(rows)
  if (!spread) return []
  const { perLevel, ...ends } = spread
  const data = { pieces: rows.length, ...ends }
  const size = ends.high - ends.low
  return [madeItem('piece-warmth', { size, data, perLevel, when: 'after', path: '' })]
}

function floorItem(logged: readonly LoggedSession[]): FairnessItem[] {
  const rows = logged.flatMap(({ session, effective }) => {
    const readings = temperaturesOf(effective, 'oven-floor')
    const baked = new Map(bakes(session, effective).map((bake) => [bake.pieceId, bake.inAt]))
    const launches = [...baked.values()].flatMap((at) => at ?? []).toSorted((a, b) => a - b)
    return session.pieces.flatMap(({ id, levelId, role }): LevelAmount[] => {
      const inAt = baked.get(id) ?? null
      if (role !== 'counted' || inAt === null) return []
      const own = readings.findLast(({ about }) => about.id === id)
      const since = launches.findLast((at) => at < inAt) ?? Number.NEGATIVE_INFINITY
      const before = own ?? readings.findLast(({ at }) => at <= inAt && at > since)
      return before ? [{ levelId, value: before.celsius }] : []
    })
  })
  const spread = spreadOf(rows)
  if (!spread) return []
  const { perLevel, ...ends } = spread
  return [
    madeItem('oven-floor', {
      ...{ size: ends.high - ends.low, data: { readings: rows.length, ...ends }, perLevel },
      ...{ when: 'after', path: '', remedies: [{ code: 'wait-for-oven-floor' }] },
    }),
  ]
}

/** Level means and their ends; null unless two levels have a reading. */
export function spreadOf(rows: readonly LevelAmount[]) {
  const perLevel = meansByLevel(rows)
  const ends = endsOf(perLevel.map(({ value }) => value))
  return ends && perLevel.length > 1 ? { ...ends, perLevel } : null
}
