import { keptAnswer } from '@/core/record/kept-answer.ts'
import type { Departure } from '@/core/session/departure.ts'
import { departures } from '@/core/session/departures.ts'
import type { Session } from '@/core/session/session-record.ts'
import { planOfSession } from './plan-in-force.ts'
import type { WholeTrial } from './whole-trial.ts'

/** What was done differently in a session from the plan it ran. */
export const departedInSession = keptAnswer((whole: WholeTrial, session: Session): Departure[] =>
  departures({
    plan: planOfSession(whole, session),
    session,
    events: whole.events,
    kitchen: whole.kitchen,
  }),
)
