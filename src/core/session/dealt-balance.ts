import { type OrderBalance, orderBalance } from '@/core/design/order-balance.ts'
import { ordersByLevel } from './earlier-orders.ts'
import type { Session } from './session-record.ts'

/** How often each level (row) met each load or place (column). */
export interface Evenness {
  times: number[][]
  least: number
  most: number
  even: boolean
}

export interface DealtBalance {
  /** Rows follow this list of levels. */
  levelIds: string[]
  dough: OrderBalance
  bake: OrderBalance
  mouth: OrderBalance
  /** Loads counted within their flight: an early load of one session may be balanced by a late one of another. */
  loads: Evenness
  places: Evenness
}

/** What the deals of all given sessions leave unbalanced, as counts over sessions, for the levels in the given order. */
export function dealtBalance(
  sessions: readonly Session[],
  levelIds: readonly string[],
): DealtBalance {
  const orders = sessions.map((session) => ordersByLevel(session, levelIds))
  const met = sessions.flatMap((session) => ovenMeetings(session, levelIds))
  return {
    levelIds: [...levelIds],
    dough: orderBalance(
      orders.map(({ dough }) => dough),
      levelIds.length,
    ),
    bake: orderBalance(
      orders.flatMap(({ bake }) => bake),
      levelIds.length,
    ),
    mouth: orderBalance(
      orders.flatMap(({ mouth }) => mouth),
      levelIds.length,
    ),
    loads: evenness(
      met.map(({ level, load }) => [level, load]),
      levelIds.length,
    ),
    places: evenness(
      met.map(({ level, place }) => [level, place]),
      levelIds.length,
    ),
  }
}

interface Meeting {
  level: number
  load: number
  place: number
}

function ovenMeetings(session: Session, levelIds: readonly string[]): Meeting[] {
  const pieces = new Map(session.pieces.map((piece) => [piece.id, piece]))
  const loads = session.dealt.loads.toSorted((one, other) => one.number - other.number)
  const firstOf = new Map<string, number>()
  return loads.flatMap((load) =>
    load.pieceIds.flatMap((id, place) => {
      const piece = pieces.get(id)
      const level = levelIds.indexOf(piece?.levelId ?? '')
      if (!piece?.flightId || level < 0) return []
      const first = firstOf.get(piece.flightId) ?? load.number
      firstOf.set(piece.flightId, first)
      return [{ level, load: load.number - first, place }]
    }),
  )
}

function evenness(met: readonly (readonly [number, number])[], levels: number): Evenness {
  const columns = Math.max(0, ...met.map(([, column]) => column + 1))
  const times = Array.from({ length: levels }, () => new Array<number>(columns).fill(0))
  for (const [level, column] of met) {
    const row = times[level]
    if (row) row[column] = (row[column] ?? 0) + 1
  }
  const spreads = Array.from({ length: columns }, (_, column) =>
    times.map((row) => row[column] ?? 0),
  )
  const all = spreads.flat()
  return {
    times,
    least: all.length === 0 ? 0 : Math.min(...all),
    most: all.length === 0 ? 0 : Math.max(...all),
    even: spreads.every((counts) => new Set(counts).size <= 1),
  }
}
