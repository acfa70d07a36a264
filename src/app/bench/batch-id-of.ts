import type { Session } from '@/core/session/session-record.ts'

/** The dough of a dough or piece. Throws for a piece of no dough: references are checked on the way in. */
export function batchIdOf(
  session: Pick<Session, 'pieces'>,
  unit: { kind: 'batch' | 'piece'; id: string },
): string {
  if (unit.kind === 'batch') return unit.id
  const piece = session.pieces.find(({ id }) => id === unit.id)
  if (!piece) throw new Error(`piece ${unit.id} belongs to no dough`)
  return piece.batchId
}
