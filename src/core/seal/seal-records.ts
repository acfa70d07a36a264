import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** What the seal reads of a trial: a whole trial always fits. Of a ballot only that it is there, never what it says. */
export interface SealRecords {
  plans: readonly Plan[]
  sessions: readonly Session[]
  events: readonly Event[]
  ballots: readonly { sessionId: string }[]
}
