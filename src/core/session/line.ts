import type { WorkedUnit } from '@/core/clock-plan/dealt-day.ts'
import type { Batch, Piece, Session } from './session-record.ts'

export type Unit = WorkedUnit

/** The pieces of a dough, in the order in which they were dealt. */
export function piecesOfBatch(session: Session, batchId: string): Piece[] {
  return session.pieces.filter((piece) => piece.batchId === batchId)
}

/** The batch by its id. Throws when the session has none: references are checked on the way in. */
export function batchOf(session: Session, batchId: string): Batch {
  const batch = session.batches.find((one) => one.id === batchId)
  if (!batch) throw new Error(`session ${session.id} has no batch ${batchId}`)
  return batch
}

/** The doughs that are worked, in the order they are listed: one that failed and was made again is none of them. */
export function doughsInWork({ batches, dealt }: Session): Batch[] {
  return batches.filter(({ id }) => dealt.doughOrder.includes(id))
}

/** The letter under which a level's line works in this session; null for a level that the session does not run. */
export function letterOfLevel(session: Session, levelId: string): string | null {
  return session.dealt.letters.find((one) => one.levelId === levelId)?.letter ?? null
}

/** The pieces an event about a batch, piece or serving of this session speaks of; none for anything else. */
export function piecesAbout(session: Session, about: { kind: string; id: string }): Piece[] {
  switch (about.kind) {
    case 'batch':
      return piecesOfBatch(session, about.id)
    case 'piece':
      return session.pieces.filter((piece) => piece.id === about.id)
    case 'serving': {
      const serving = session.dealt.servings.find((one) => one.id === about.id)
      return session.pieces.filter((piece) => piece.id === serving?.pieceId)
    }
    default:
      return []
  }
}
