import type { Plan } from '@/core/trial/plan-record.ts'
import { asTheyCome } from './as-they-come.ts'
import type { Standing } from './effective-events.ts'
import type { Session } from './session-record.ts'

/** A code in its turn; the warm-up belongs to no flight. */
export interface ServingTurn {
  id: string
  code: string
  pieceId: string
  flight: number | null
}

/**
 * The codes of a session in the order they come to the table when served as baked: the warm-up, then flight by flight in the
 * order of the pieces, as far as the log does not tell of another. Pieces that are not served have no turn.
 */
export function servingTurns(
  { dealt }: Pick<Session, 'dealt'>,
  plan: Pick<Plan, 'serving'>,
  events: readonly Standing[],
  notServed: readonly string[],
): ServingTurn[] {
  const turn = (of: string, flight: number | null) =>
    dealt.servings
      .filter(({ pieceId }) => pieceId === of && !notServed.includes(of))
      .map(({ id, code, pieceId }) => ({ id, code, flight, pieceId }))
  const warmUps = dealt.servings.filter(({ flightId }) => flightId === null)
  const flights = dealt.flights.toSorted((one, other) => one.number - other.number)
  return [
    ...warmUps.flatMap(({ pieceId }) => turn(pieceId, null)),
    ...asTheyCome(
      flights.flatMap(({ number, pieceIds }) =>
        pieceIds.flatMap((pieceId) => turn(pieceId, number)),
      ),
      plan,
      events,
    ),
  ]
}
