import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { TastingRecords } from './tasting-records.ts'

/**
 * True while a session's codes must not be given away: something was served or a ballot begun, and it was not unsealed. An
 * early close alone does not unseal.
 */
export function sessionSealed(
  records: Pick<TastingRecords, 'events' | 'ballots'>,
  sessionId: string,
): boolean {
  const effective = eventsOfSession(records.events, sessionId)
  if (effective.some((event) => event.kind === 'unsealed')) return false
  const tasted = records.ballots.some((ballot) => ballot.sessionId === sessionId)
  return (
    tasted || effective.some((event) => event.kind === 'served' || event.kind === 'tasting-closed')
  )
}

/** True once a session's codes were given away. */
export function sessionUnsealed(events: readonly Event[], sessionId: string): boolean {
  return eventsOfSession(events, sessionId).some((event) => event.kind === 'unsealed')
}
