import { bakedPieces } from './bake-entry.ts'
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
  const ins = stampsOf(effective, 'bake-in')
  const outs = stampsOf(effective, 'bake-out')
  return session.pieces.map((piece) => {
    const inAt = ins.get(piece.id) ?? null
    const outAt = outs.get(piece.id) ?? null
    const bakeSeconds =
      inAt === null || outAt === null || outAt < inAt ? null : (outAt - inAt) / 1000
    return { pieceId: piece.id, inAt, outAt, bakeSeconds }
  })
}

/** When each piece was last said to go into the oven, or to come out. */
export function stampsOf(
  effective: readonly Standing[],
  kind: 'bake-in' | 'bake-out',
): ReadonlyMap<string, number> {
  const stamps = new Map<string, number>()
  for (const event of effective)
    if (event.kind === kind) for (const id of bakedPieces(event)) stamps.set(id, event.at)
  return stamps
}
