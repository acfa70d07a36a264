import { keptAnswer } from '@/core/record/kept-answer.ts'
import type { Session } from '@/core/session/session-record.ts'
import { type LevelAsWorked, workedLevels } from '@/core/session/worked-levels.ts'
import { planOfSession } from './plan-in-force.ts'
import type { WholeTrial } from './whole-trial.ts'

/** The levels of a session's doughs as planned, as weighed and as handled, by the plan the session ran. */
export const workedInSession = keptAnswer((whole: WholeTrial, session: Session): LevelAsWorked[] =>
  workedLevels({
    plan: planOfSession(whole, session),
    session,
    events: whole.events,
    kitchen: whole.kitchen,
  }),
)
