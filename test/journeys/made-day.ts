import type { Event } from '@/core/session/event-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { madePlan } from '../core/made-plan.ts'
import { madeSession } from '../core/session/made-session.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

/** A session dealt at `begun` (UTC ms) of a plan as changed, with nobody asked to taste: the day is what is tried. */
export function dayOf(change: Partial<Plan>, begun: number, events: Event[] = []): WholeTrial {
  const plan = madePlan({
    ...{ tasters: [], flights: 1, warmUpPiece: false, responses: [], mainResponseId: null },
    ...{ at: begun - 3600_000, ...change },
  })
  const session = { ...madeSession(plan), createdAt: begun, trialId: plan.trialId }
  const { trial } = wholeTrialOf()
  return {
    ...{ plans: [plan], sessions: [session], events, ballots: [], photos: [], kitchen: [] },
    trial: { ...trial, id: plan.trialId, planId: plan.id, createdAt: begun - 3600_000 },
  }
}
