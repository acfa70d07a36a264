import { sessionSealed, sessionUnsealed } from '@/core/seal/sealed.ts'
import { bakes } from '@/core/session/bakes.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { failuresOf } from '@/core/session/failures.ts'
import type { Session } from '@/core/session/session-record.ts'
import { tasterQuestions } from '@/core/tasting/taster-questions.ts'
import { planIn, type TastingRecords } from '@/core/tasting/tasting-records.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'

export type Stage = 'planning' | 'working' | 'tasting' | 'sealed' | 'between' | 'answered'

/**
 * Where a trial stands: planning before the first session; working while a session is made; tasting while ballots come in; sealed
 * when all are in (or the tasting was closed) and the codes are still kept; between when the next planned session waits to be
 * begun; answered when every planned session is done.
 */
export function stageOf(whole: TastingRecords): Stage {
  const sessions = whole.sessions.toSorted((one, other) => one.number - other.number)
  const [first] = sessions
  if (!first) return 'planning'
  const open = sessions.find((session) => !isDone(whole, session))
  if (!open) return sessions.length >= first.plannedSessions ? 'answered' : 'between'
  if (!sessionSealed(whole, open.id)) return 'working'
  const { complete, seal } = tastingState(whole, open.id)
  return complete || seal === 'closed' ? 'sealed' : 'tasting'
}

/** How many sessions are done: unsealed, or, where tasters are asked nothing, with every counted piece baked or lost. */
export function sessionsDone(whole: TastingRecords): number {
  return whole.sessions.filter((session) => isDone(whole, session)).length
}

function isDone(whole: TastingRecords, session: Session): boolean {
  if (sessionUnsealed(whole.events, session.id)) return true
  if (tasterQuestions(planIn(whole, session)).length > 0 || session.dealt.sets.length > 0)
    return false
  const effective = eventsOfSession(whole.events, session.id)
  const lost = new Set(failuresOf(session, effective).flatMap((failure) => failure.pieceIds))
  const baked = new Map(bakes(session, effective).map((bake) => [bake.pieceId, bake.outAt]))
  const counted = session.pieces.filter((piece) => piece.role === 'counted')
  return counted.every((piece) => lost.has(piece.id) || (baked.get(piece.id) ?? null) !== null)
}
