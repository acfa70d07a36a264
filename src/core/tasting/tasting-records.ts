import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Ballot } from './ballot-record.ts'

/** What the tasting reads of a trial: a whole trial always fits. */
export interface TastingRecords {
  plans: readonly Plan[]
  sessions: readonly Session[]
  events: readonly Event[]
  ballots: readonly Ballot[]
}

/** The session by its id. Throws when the trial has none: a programmer's mistake. */
export function sessionIn(records: Pick<TastingRecords, 'sessions'>, sessionId: string): Session {
  const session = records.sessions.find((one) => one.id === sessionId)
  if (!session) throw new Error(`no session ${sessionId}`)
  return session
}

/** The plan a session runs. Throws when the trial has lost it: references are checked on the way in. */
export function planIn(records: Pick<TastingRecords, 'plans'>, session: Session): Plan {
  const plan = records.plans.find((one) => one.id === session.planId)
  if (!plan) throw new Error(`no plan ${session.planId}`)
  return plan
}
