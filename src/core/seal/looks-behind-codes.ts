import type { NewEvent } from '@/core/session/press/new-event.ts'
import type { SealRecords } from './seal-records.ts'
import { sealedSessions } from './sealed.ts'

interface LookedAt extends Pick<SealRecords, 'sessions' | 'events' | 'ballots'> {
  trial: { id: string }
}

/** The entries that say that somebody looked behind the codes of a trial: one for each session whose codes are kept. */
export function looksBehindCodes(looked: LookedAt, reason: string): NewEvent[] {
  return sealedSessions(looked).map(({ id }) => ({
    kind: 'peeked',
    trialId: looked.trial.id,
    sessionId: id,
    about: { kind: 'session', id },
    reason,
  }))
}
