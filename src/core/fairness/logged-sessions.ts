import { eventsOfSession, type Standing } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { toldTrial } from '@/core/whole-trial/told-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** A session with the plan it ran and the log as it stands. */
export interface LoggedSession {
  session: Session
  plan: Plan
  effective: readonly Standing[]
}

/** The sessions of a trial whose levels can be told, in their order, each with its plan and its log. */
export function loggedSessions(all: WholeTrial): LoggedSession[] {
  const whole = toldTrial(all)
  return whole.sessions
    .toSorted((a, b) => a.number - b.number)
    .map((session) => ({
      session,
      plan: planOfSession(whole, session),
      effective: eventsOfSession(whole.events, session.id),
    }))
}
