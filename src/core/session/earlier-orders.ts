import type { Serving, Session } from './session-record.ts'

/** Orders of a session as indexes into a list of levels: what a new deal balances and what the fairness check counts. */
export interface OrdersByLevel {
  dough: number[]
  bake: number[][]
  /** One order a taster and flight. */
  mouth: number[][]
}

/**
 * Reads a session's orders as indexes into `levelIds`. Pieces and doughs of a level that is not in the list are left out;
 * one dough for all levels gives no dough order. A serving that repeats another is left out, unless `againIds` names its
 * level: then it is a line of its own, behind the levels.
 */
export function ordersByLevel(
  session: Session,
  levelIds: readonly string[],
  againIds: readonly string[] = [],
): OrdersByLevel {
  const { batches, pieces, dealt } = session
  const levelOfBatch = new Map(batches.map((batch) => [batch.id, batch.levelId]))
  const levelOfPiece = new Map(pieces.map((piece) => [piece.id, piece.levelId]))
  const servings = new Map(dealt.servings.map((serving) => [serving.id, serving]))
  const indexes = (levels: (string | null | undefined)[]) =>
    levels.map((id) => levelIds.indexOf(id ?? '')).filter((index) => index >= 0)
  const flights = dealt.flights.toSorted((one, other) => one.number - other.number)
  const lineOf = ({ pieceId, repeats }: Serving): number[] => {
    const levelId = levelOfPiece.get(pieceId) ?? ''
    if (repeats === undefined) return indexes([levelId])
    const at = againIds.indexOf(levelId)
    return at < 0 ? [] : [levelIds.length + at]
  }
  const ofPieces = (pieceIds: string[]) => indexes(pieceIds.map((id) => levelOfPiece.get(id)))
  return {
    dough: indexes(dealt.doughOrder.map((id) => levelOfBatch.get(id))),
    bake: flights.map((flight) => ofPieces(flight.pieceIds)),
    mouth: dealt.tasterOrders.flatMap((order) =>
      flights.map((flight) =>
        order.servingIds.flatMap((id) => {
          const serving = servings.get(id)
          return serving?.flightId === flight.id ? lineOf(serving) : []
        }),
      ),
    ),
  }
}

/** True when a session ran exactly these levels, in whatever order: only then its orders can be completed by new ones. */
export function hasLevels(session: Session, levelIds: readonly string[]): boolean {
  const ran = new Set(session.dealt.letters.map((letter) => letter.levelId))
  return ran.size === levelIds.length && levelIds.every((id) => ran.has(id))
}
