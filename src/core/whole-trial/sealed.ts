import type { Session } from '@/core/session/session-record.ts'
import { sessionSealed } from '@/core/tasting/session-sealed.ts'
import type { TastingRecords } from '@/core/tasting/tasting-records.ts'

/** The sessions whose codes must not be given away: tasted from, and not unsealed. */
export function sealedSessions(
  whole: Pick<TastingRecords, 'sessions' | 'events' | 'ballots'>,
): Session[] {
  return whole.sessions.filter((session) => sessionSealed(whole, session.id))
}

/** True while any session is sealed: then no face gives findings, a report or a level of this trial. */
export function sealed(whole: Pick<TastingRecords, 'sessions' | 'events' | 'ballots'>): boolean {
  return sealedSessions(whole).length > 0
}
