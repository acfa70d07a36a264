import type { Standing } from './effective-events.ts'
import type { EventOf } from './event-record.ts'
import { piecesAbout } from './line.ts'
import type { Session } from './session-record.ts'

export interface Failure {
  what: EventOf<'failure'>['what']
  /** Every piece it concerns: one, or all of a dough. */
  pieceIds: string[]
  batchId: string | null
  servingId: string | null
  at: number
  note: string | null
}

/** The failures logged for this session's doughs, pieces and servings, from effective events. */
export function failuresOf(session: Session, effective: readonly Standing[]): Failure[] {
  const failures = effective.filter((event) => event.kind === 'failure')
  return failures.flatMap((event) => {
    const pieces = piecesAbout(session, event.about)
    const isBatch = session.batches.some((batch) => batch.id === event.about.id)
    if (pieces.length === 0 && !isBatch) return []
    return {
      what: event.what,
      pieceIds: pieces.map((piece) => piece.id),
      batchId: pieces[0]?.batchId ?? event.about.id,
      servingId: event.about.kind === 'serving' ? event.about.id : null,
      at: event.at,
      note: event.note ?? null,
    }
  })
}

/** Pieces that never reached the tasters: `not-served` was logged for them, their serving or their whole dough. */
export function notServed(session: Session, effective: readonly Standing[]): Set<string> {
  return new Set(
    failuresOf(session, effective)
      .filter((failure) => failure.what === 'not-served')
      .flatMap((failure) => failure.pieceIds),
  )
}
