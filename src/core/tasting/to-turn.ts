import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Turned } from '@/core/session/event-record.ts'
import { notServed } from '@/core/session/failures.ts'
import { doughsInWork } from '@/core/session/line.ts'
import type { Session } from '@/core/session/session-record.ts'
import { effectiveBallots } from './effective-ballots.ts'
import { type Found, type PlateRound, plateRounds, turnedPlates } from './plates.ts'
import { servedInOrder, tasterOrder } from './taster-order.ts'
import { planIn, sessionIn, type TastingRecords } from './tasting-records.ts'

/** What must be turned over before the codes of a session can be opened. */
export interface ToTurn {
  /** The rounds that were scored, by plate. */
  rounds: PlateRound[]
  /** The doughs by their letters, whose tickets say which level they are; empty where no cups were shuffled. */
  doughs: { batchId: string; letter: string }[]
  tickets: { levelId: string; ticket: string }[]
}

/** All plate rounds of whoever plates for themselves, scored or not. */
export function roundsAtTable(
  records: TastingRecords,
  sessionId: string,
  tasterId: string,
): PlateRound[] {
  const session = sessionIn(records, sessionId)
  const lost = notServed(session, eventsOfSession(records.events, sessionId))
  const served = servedInOrder(tasterOrder(session, tasterId), lost)
  return plateRounds(planIn(records, session), session, tasterId, served)
}

/** What is still to be turned over in a session; null where nothing was shuffled or all is turned. */
export function toTurn(records: TastingRecords, sessionId: string): ToTurn | null {
  const session = sessionIn(records, sessionId)
  const opened = eventsOfSession(records.events, sessionId).some(({ kind }) => kind === 'unsealed')
  if (opened) return null
  const ballots = effectiveBallots(records.ballots, sessionId)
  const scored = new Set(ballots.map(({ about }) => about.id))
  const tasterId = session.dealt.tasterOrders[0]?.tasterId ?? ''
  const rounds = roundsAtTable(records, sessionId, tasterId).filter(({ setId, plates }) =>
    setId === null ? plates.some(({ key }) => scored.has(key)) : scored.has(setId),
  )
  const tickets = session.dealt.tickets ?? []
  const doughs =
    tickets.length === 0
      ? []
      : doughsInWork(session)
          .map(({ id, letter }) => ({ batchId: id, letter }))
          .toSorted((one, other) => (one.letter < other.letter ? -1 : 1))
  return rounds.length === 0 && doughs.length === 0 ? null : { rounds, doughs, tickets }
}

/**
 * What was turned, as the unsealing keeps it: letters by plate, tickets by dough (its id). Null while something is unturned, or
 * a ticket is named twice.
 */
export function turnedOf(
  session: Session,
  { rounds, doughs, tickets }: ToTurn,
  letters: Found,
  ticketOf: Found,
): Turned | null {
  const plates = turnedPlates(session, rounds, letters)
  const levels = doughs.flatMap(({ batchId }) => {
    const found = tickets.find(({ ticket }) => ticket === ticketOf[batchId])
    return found ? [{ batchId, levelId: found.levelId }] : []
  })
  const different = new Set(levels.map(({ levelId }) => levelId)).size
  if (!plates || levels.length < doughs.length || different < levels.length) return null
  return { ...plates, ...(levels.length > 0 ? { doughs: levels } : {}) }
}

/** True when what was turned speaks of all that had to be, each plate and dough once. */
export function turnsAll(session: Session, wanted: ToTurn, turned: Turned): boolean {
  const same = (one: readonly string[], other: readonly string[]) =>
    one.toSorted().join() === other.toSorted().join()
  const servings = wanted.rounds.filter(({ setId }) => setId === null)
  const keys = (rounds: readonly PlateRound[]) =>
    rounds.flatMap(({ plates }) => plates.map(({ key }) => key))
  const pieceOf = (id: string) => session.dealt.servings.find((each) => each.id === id)?.pieceId
  const { plates = [], samples = [], doughs = [] } = turned
  return (
    same(
      plates.map(({ servingId }) => servingId),
      keys(servings),
    ) &&
    servings.every((round) =>
      same(
        round.plates.map(({ key }) => pieceOf(key) ?? ''),
        plates
          .filter(({ servingId }) => round.plates.some(({ key }) => key === servingId))
          .map(({ pieceId }) => pieceId),
      ),
    ) &&
    same(
      samples.map(({ code }) => code),
      keys(wanted.rounds.filter(({ setId }) => setId !== null)),
    ) &&
    same(
      doughs.map(({ batchId }) => batchId),
      wanted.doughs.map(({ batchId }) => batchId),
    ) &&
    (doughs.length === 0 ||
      same(
        doughs.map(({ levelId }) => levelId),
        wanted.tickets.map(({ levelId }) => levelId),
      ))
  )
}
