import { letterOfLevel, type Unit } from '@/core/session/line.ts'
import type { Piece, Session } from '@/core/session/session-record.ts'
import type { Response } from '@/core/trial/response.ts'

/**
 * A dough or piece without its level: the letter it works under, and which piece of that line it is: "flight 2", "warm-up",
 * "spare 1", or nothing for a dough and an only piece. Never its code.
 */
export function unitLetter(session: Session, unit: Unit): { letter: string; which: string } {
  const batchLetter = (batchId: string | undefined) =>
    session.batches.find(({ id }) => id === batchId)?.letter ?? 'A batch'
  if (unit.kind === 'batch') return { letter: batchLetter(unit.id), which: '' }
  const piece = session.pieces.find(({ id }) => id === unit.id)
  if (!piece) return { letter: batchLetter(undefined), which: '' }
  const letter = letterOfLevel(session, piece.levelId) ?? batchLetter(piece.batchId)
  return { letter, which: whichOfLine(session, piece) }
}

function whichOfLine(session: Session, piece: Piece): string {
  const { role, levelId, flightId } = piece
  if (role === 'warm-up') return 'warm-up'
  if (role === 'spare') {
    const spares = session.pieces.filter((one) => one.role === 'spare' && one.levelId === levelId)
    return spares.length > 1 ? `spare ${spares.indexOf(piece) + 1}` : 'spare'
  }
  const { flights } = session.dealt
  const flight = flights.find((each) => each.id === flightId)
  return flights.length > 1 && flight ? `flight ${flight.number}` : ''
}

/** What a difference in a response is counted in: points of its scale, or its own unit. */
export function responseUnit({ scale }: Pick<Response, 'scale'>): string {
  return scale.kind === 'measured' ? scale.unitOfMeasure : 'points'
}
