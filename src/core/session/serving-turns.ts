import type { Session } from './session-record.ts'

/** A code in its turn; the warm-up belongs to no flight. */
export interface ServingTurn {
  id: string
  code: string
  flight: number | null
}

/**
 * The codes of a session in the order they come to the table when served as baked: the warm-up, then flight by flight in the
 * order of the pieces. Pieces that are not served have no turn.
 */
export function servingTurns(
  { dealt }: Pick<Session, 'dealt'>,
  notServed: readonly string[],
): ServingTurn[] {
  const turn = (pieceId: string, flight: number | null) =>
    dealt.servings
      .filter((serving) => serving.pieceId === pieceId && !notServed.includes(pieceId))
      .map(({ id, code }) => ({ id, code, flight }))
  const warmUps = dealt.servings.filter(({ flightId }) => flightId === null)
  const flights = dealt.flights.toSorted((one, other) => one.number - other.number)
  return [
    ...warmUps.flatMap(({ pieceId }) => turn(pieceId, null)),
    ...flights.flatMap(({ number, pieceIds }) =>
      pieceIds.flatMap((pieceId) => turn(pieceId, number)),
    ),
  ]
}
