import type { Standing } from './effective-events.ts'
import type { Session } from './session-record.ts'

export interface Bake {
  pieceId: string
  inAt: number | null
  outAt: number | null
  bakeSeconds: number | null
}

/**
 * When each piece went into the oven and came out, and the seconds between, for every piece of the session. Of several
 * stamps of one piece the last stands. Null where a stamp is missing, and no bake time where out lies before in.
 */
export function bakes(session: Session, effective: readonly Standing[]): Bake[] {
  return session.pieces.map((piece) => {
    const inAt = lastStamp(effective, 'bake-in', piece.id)
    const outAt = lastStamp(effective, 'bake-out', piece.id)
    const bakeSeconds =
      inAt === null || outAt === null || outAt < inAt ? null : (outAt - inAt) / 1000
    return { pieceId: piece.id, inAt, outAt, bakeSeconds }
  })
}

/** When a piece was last said to go into the oven or to come out; null where nobody said so. */
export function lastStamp(
  effective: readonly Standing[],
  kind: 'bake-in' | 'bake-out',
  pieceId: string,
): number | null {
  return (
    effective.findLast((event) => event.kind === kind && event.about.id === pieceId)?.at ?? null
  )
}
