import type { Standing } from '@/core/session/effective-events.ts'
import { letterOfLevel } from '@/core/session/line.ts'
import { measureValues } from '@/core/session/measure-values.ts'
import type { Piece, Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Cell, Gap, Observation, Observed } from './observed.ts'
import { failureOfPiece } from './piece-failure.ts'

/**
 * The baker's values of one session: a row for each dough or counted piece that has one, and a gap for each counted piece that
 * failed and so has none. A value of one dough that serves all levels compares nothing and is left out.
 */
export function bakerObservations(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
): Observed & { topped: Observation[] } {
  const rows: Observation[] = []
  const gaps: Gap[] = []
  const topped: Observation[] = []
  const failed = failureOfPiece(session, effective)
  for (const response of plan.responses) {
    if (response.by !== 'baker') continue
    const values = measureValues(session, plan, effective, response)
    for (const { unit, value, topped: isTopped } of values) {
      const cell =
        unit.kind === 'piece'
          ? ofPiece(session, pieceOf(session, unit.id), response.id)
          : ofBatch(session, unit.id, response.id)
      if (!cell) continue
      const row = { ...cell, value }
      rows.push(row)
      if (isTopped) topped.push(row)
    }
    if (response.about === 'batch') continue
    const known = new Set(values.map(({ unit }) => unit.id))
    for (const piece of session.pieces) {
      const because = failed.get(piece.id)
      const cell = ofPiece(session, piece, response.id)
      if (because && cell && piece.role === 'counted' && !known.has(piece.id))
        gaps.push({ ...cell, because: because.what, why: because.note })
    }
  }
  return { rows, gaps, topped }
}

const pieceOf = (session: Session, id: string) => session.pieces.find((piece) => piece.id === id)

const nobody = { tasterId: null, position: null, positionInFlight: null, minutesSinceOven: null }

function ofPiece(session: Session, piece: Piece | undefined, responseId: string): Cell | null {
  const letter = piece ? letterOfLevel(session, piece.levelId) : null
  if (!piece || letter === null) return null
  const { flightId, batchId, levelId } = piece
  const where = { flightId, batchId, letter, pieceId: piece.id, levelId }
  return { sessionId: session.id, ...where, ...nobody, responseId }
}

function ofBatch(session: Session, batchId: string, responseId: string): Cell | null {
  const batch = session.batches.find((one) => one.id === batchId)
  if (!batch || batch.levelId === null) return null
  const where = { flightId: null, batchId, letter: batch.letter, pieceId: null }
  return { sessionId: session.id, ...where, levelId: batch.levelId, ...nobody, responseId }
}
