import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from './whole-trial.ts'

/** The plan revision the trial stands on now. Throws when the trial names a plan it does not have: checked on the way in. */
export function planInForce(whole: WholeTrial): Plan {
  return planById(whole, whole.trial.planId)
}

/** The plan a session was run by: departures and levels are read against it. */
export function planOfSession(whole: WholeTrial, session: Session): Plan {
  return planById(whole, session.planId)
}

function planById(whole: WholeTrial, planId: string): Plan {
  const plan = whole.plans.find((candidate) => candidate.id === planId)
  if (!plan) throw new Error(`trial ${whole.trial.id} has no plan ${planId}`)
  return plan
}
