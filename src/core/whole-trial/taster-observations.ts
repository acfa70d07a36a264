import { asTheyCame } from '@/core/session/as-they-come.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import { notServed } from '@/core/session/failures.ts'
import { letterOfLevel } from '@/core/session/line.ts'
import { minutesSinceOven } from '@/core/session/serving-age.ts'
import type { Serving, Session } from '@/core/session/session-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import { asTasted, servedInOrder, tasterOrder } from '@/core/tasting/taster-order.ts'
import { asksLiking, tasterQuestions } from '@/core/tasting/taster-questions.ts'
import { type SessionTaster, tastersOfSession } from '@/core/tasting/tasters-of-session.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Cell, Gap, Observed } from './observed.ts'
import { failureOfPiece } from './piece-failure.ts'

/**
 * What the tasters of one session answered, one row a value, by their own order; and a gap for every answer that should be
 * there and is not: the piece failed, the taster declined or left, or no answer was given (with their why). Servings that
 * repeat another speak of the taster alone and are no rows here. What somebody likes who knows which is which is left out,
 * as long as another tastes blind.
 */
export function tasterObservations(
  session: Session,
  plan: Plan,
  effective: readonly Standing[],
  ballots: readonly Ballot[],
): Observed {
  const observed: Observed = { rows: [], gaps: [] }
  const people = tastersOfSession(session, plan, effective, ballots)
  const late = people.filter((taster) => taster.late).map((taster) => taster.tasterId)
  const failed = failureOfPiece(session, effective)
  const lost = notServed(session, effective)
  const questions = tasterQuestions(plan)
  const someBlind = people.some(({ knows, presence }) => !knows && presence !== 'declined')
  const leftOut = ({ knows }: SessionTaster) => knows && someBlind
  for (const taster of people) {
    const order = tasterOrder(session, taster.tasterId, late)
    const own = ballots.filter(({ tasterId }) => tasterId === taster.tasterId)
    const came = asTasted(asTheyCame(servedInOrder(order, lost), plan, effective), own)
    for (const serving of order) {
      if (serving.repeats !== undefined) continue
      const ballot = own.find(({ about }) => about.kind === 'serving' && about.id === serving.id)
      const piece = session.pieces.find((one) => one.id === serving.pieceId)
      const letter = piece ? letterOfLevel(session, piece.levelId) : null
      if (!piece || letter === null || piece.role !== 'counted') continue
      const where: Omit<Cell, 'responseId'> = {
        sessionId: session.id,
        flightId: serving.flightId,
        batchId: piece.batchId,
        letter,
        pieceId: piece.id,
        levelId: piece.levelId,
        tasterId: taster.tasterId,
        ...placesOf(serving, came),
        minutesSinceOven:
          ballot?.startedAt === undefined
            ? null
            : minutesSinceOven(effective, piece.id, ballot.startedAt),
      }
      const failure = failed.get(piece.id)
      for (const response of questions) {
        const { id: responseId } = response
        const answer = ballot?.answers.find((one) => one.responseId === responseId)
        if (leftOut(taster) && asksLiking(response)) {
          if (answer) observed.gaps.push({ ...where, responseId, because: 'knows', why: null })
        } else if (answer && answer.value !== null)
          observed.rows.push({ ...where, responseId, value: answer.value })
        else if (lost.has(piece.id) && failure && taster.presence !== 'awaited')
          observed.gaps.push({ ...where, responseId, because: failure.what, why: failure.note })
        else
          observed.gaps.push(
            ...gapOf({ ...where, responseId }, taster.presence, answer?.why ?? null),
          )
      }
    }
  }
  return observed
}

function gapOf(cell: Cell, presence: SessionTaster['presence'], why: string | null): Gap[] {
  if (presence === 'awaited') return []
  return [{ ...cell, because: presence === 'present' ? 'no-answer' : presence, why }]
}

/** The position among what came to the taster, in all and within the flight; none where it never came. */
function placesOf(
  serving: Serving,
  came: readonly Serving[],
): Pick<Cell, 'position' | 'positionInFlight'> {
  const index = came.indexOf(serving)
  if (index < 0) return { position: null, positionInFlight: null }
  const before = came.slice(0, index + 1).filter(({ flightId }) => flightId === serving.flightId)
  return { position: index + 1, positionInFlight: before.length }
}
