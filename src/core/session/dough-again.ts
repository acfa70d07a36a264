import { letterAt } from '@/core/design/letters.ts'
import type { Standing } from './effective-events.ts'
import { piecesOfBatch } from './line.ts'
import type { Piece, Session } from './session-record.ts'

/** Why a dough cannot be made again: it is not in work, a piece of it was baked, or people have tasted. */
export type NotAgain = 'not-in-work' | 'was-baked' | 'was-served'

export type DoughAgain =
  | { ok: true; session: Session; batchId: string; letter: string }
  | { ok: false; reason: NotAgain }

/** Why this dough cannot be made again; null where it can. `tasted`: a serving or a ballot of the session stands. */
export function notAgain(
  session: Session,
  batchId: string,
  log: readonly Standing[],
  tasted: boolean,
): NotAgain | null {
  if (!session.dealt.doughOrder.includes(batchId)) return 'not-in-work'
  if (tasted) return 'was-served'
  const pieceIds = new Set(piecesOfBatch(session, batchId).map(({ id }) => id))
  const baked = log.some(
    (event) =>
      event.kind === 'bake-in' &&
      (event.about.id === batchId ||
        pieceIds.has(event.about.id) ||
        event.pieceIds?.some((id) => pieceIds.has(id))),
  )
  return baked ? 'was-baked' : null
}

/**
 * The session with a failed dough made again: a new dough of its level, under the next free letter, worked after the others. Its
 * pieces take the places of the old ones in the flights and under their codes, and go into the oven after all others. The old
 * dough and its pieces stay in the record, in no order and no flight. `newId` gives the ids of the dough, its pieces and loads.
 */
export function doughAgain(
  session: Session,
  batchId: string,
  { log, tasted, newId }: { log: readonly Standing[]; tasted: boolean; newId: () => string },
): DoughAgain {
  const old = session.batches.find(({ id }) => id === batchId)
  const reason = old ? notAgain(session, batchId, log, tasted) : 'not-in-work'
  if (!old || reason !== null) return { ok: false, reason: reason ?? 'not-in-work' }
  const letter = freeLetter(session)
  const dough = { id: newId(), letter, levelId: old.levelId }
  const before = piecesOfBatch(session, batchId)
  const after = before.map((piece): Piece => ({ ...piece, id: newId(), batchId: dough.id }))
  const newOf = new Map(before.map(({ id }, at) => [id, after[at]?.id ?? id]))
  const instead = (id: string) => newOf.get(id) ?? id
  const laid = (piece: Piece): Piece =>
    newOf.has(piece.id) ? { ...piece, flightId: null, role: 'spare' } : piece
  const { dealt } = session
  return {
    ok: true,
    batchId: dough.id,
    letter,
    session: {
      ...session,
      batches: [...session.batches, dough],
      pieces: [...session.pieces.map(laid), ...after],
      dealt: {
        ...dealt,
        letters: dealt.letters.map((one) =>
          one.levelId === old.levelId ? { ...one, letter } : one,
        ),
        doughOrder: [...dealt.doughOrder.filter((id) => id !== batchId), dough.id],
        flights: dealt.flights.map((flight) => ({
          ...flight,
          pieceIds: lastOf(flight.pieceIds, newOf).map(instead),
        })),
        loads: loadsAfter(dealt.loads, newOf, newId),
        servings: dealt.servings.map((serving) => ({
          ...serving,
          pieceId: instead(serving.pieceId),
        })),
      },
    },
  }
}

/** The next letter that no dough of the session has had. */
function freeLetter({ batches, dealt }: Session): string {
  const taken = new Set([...batches, ...dealt.letters].map(({ letter }) => letter))
  let at = 0
  while (taken.has(letterAt(at))) at += 1
  return letterAt(at)
}

/** The pieces of a flight with those of the new dough after all others: they are baked last. */
function lastOf(ids: readonly string[], newOf: ReadonlyMap<string, string>): string[] {
  return [...ids.filter((id) => !newOf.has(id)), ...ids.filter((id) => newOf.has(id))]
}

/** The loads without the old pieces, then the new ones load by load as before. */
function loadsAfter(
  loads: Session['dealt']['loads'],
  newOf: ReadonlyMap<string, string>,
  newId: () => string,
): Session['dealt']['loads'] {
  const inTurn = loads.toSorted((one, other) => one.number - other.number)
  const others = inTurn.flatMap((load) => {
    const pieceIds = load.pieceIds.filter((id) => !newOf.has(id))
    return pieceIds.length > 0 ? [{ ...load, pieceIds }] : []
  })
  const again = inTurn.flatMap(({ pieceIds }) => {
    const moved = pieceIds.flatMap((id) => newOf.get(id) ?? [])
    return moved.length > 0 ? [{ id: newId(), number: 0, pieceIds: moved }] : []
  })
  return [...others, ...again].map((load, at) => ({ ...load, number: at + 1 }))
}
