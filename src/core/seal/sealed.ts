import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { SealRecords } from './seal-records.ts'

/**
 * How a session's codes are kept: `not-begun` before the first serving or ballot, `sealed` from there on, `closed` when the
 * tasting ended early, or its plates are being turned, and the codes are still kept, `unsealed` once they were given away.
 */
export type Seal = 'not-begun' | 'sealed' | 'closed' | 'unsealed'

/** How a session's codes are kept now. */
export function sealOf(records: Pick<SealRecords, 'events' | 'ballots'>, sessionId: string): Seal {
  const effective = eventsOfSession(records.events, sessionId)
  const said = (kind: Event['kind']) => effective.some((event) => event.kind === kind)
  if (said('unsealed')) return 'unsealed'
  if (said('tasting-closed') || said('plates-turned')) return 'closed'
  const tasted = records.ballots.some((ballot) => ballot.sessionId === sessionId)
  return tasted || said('served') ? 'sealed' : 'not-begun'
}

/**
 * True while a session's codes must not be given away. An early close alone does not unseal; and where cups were shuffled
 * nothing is told of a level from the deal on, since nobody knows it.
 */
export function sessionSealed(
  records: Pick<SealRecords, 'sessions' | 'events' | 'ballots'>,
  sessionId: string,
): boolean {
  const seal = sealOf(records, sessionId)
  const session = records.sessions.find(({ id }) => id === sessionId)
  const shuffled = session?.dealt.tickets !== undefined && seal !== 'unsealed'
  return seal === 'sealed' || seal === 'closed' || shuffled
}

/**
 * True while which dough is which level stands in no record: its cups were shuffled and the tickets are not turned, or they are
 * lost for good.
 */
export function levelsUnknown(session: Session | undefined, events: readonly Event[]): boolean {
  if (session?.dealt.tickets === undefined) return false
  return !sessionUnsealed(events, session.id) || lostBecause(events, session.id) !== null
}

/** Why nobody can tell any more what lay under the cups or plates of a session; null where it was told, or still may be. */
export function lostBecause(events: readonly Event[], sessionId: string): string | null {
  const opened = eventsOfSession(events, sessionId).find(({ kind }) => kind === 'unsealed')
  return opened?.kind === 'unsealed' ? (opened.lost ?? null) : null
}

/** True once a session's codes were given away. */
export function sessionUnsealed(events: readonly Event[], sessionId: string): boolean {
  return eventsOfSession(events, sessionId).some((event) => event.kind === 'unsealed')
}

/** The sessions whose codes must not be given away. */
export function sealedSessions(
  records: Pick<SealRecords, 'sessions' | 'events' | 'ballots'>,
): Session[] {
  return records.sessions.filter((session) => sessionSealed(records, session.id))
}

/** True while any session is sealed: then no face gives findings, a report or a level of this trial. */
export function sealed(records: Pick<SealRecords, 'sessions' | 'events' | 'ballots'>): boolean {
  return sealedSessions(records).length > 0
}
