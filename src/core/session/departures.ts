import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Departure } from './departure.ts'
import { eventsOfSession } from './effective-events.ts'
import type { Event } from './event-record.ts'
import { bakeOrderDepartures, doughOrderDepartures } from './order-departures.ts'
import type { Session } from './session-record.ts'
import { stepDepartures } from './step-departures.ts'
import { type StepRun, stepRuns } from './step-runs.ts'
import { weightDepartures } from './weight-departures.ts'

/**
 * What was done differently from the plan, found in the log: doughs or pieces taken in another order, steps shorter or longer
 * than their tolerance, weights off by more than the scale and one percent, steps passed over or repeated too often. Nothing
 * is held against a step that is still to come.
 */
export function departures({
  session,
  plan,
  events,
  kitchen = [],
}: {
  session: Session
  plan: Plan
  events: readonly Event[]
  kitchen?: readonly KitchenThing[]
}): Departure[] {
  const effective = eventsOfSession(events, session.id)
  const runs: StepRun[] = stepRuns(session, plan, effective)
  return [
    ...doughOrderDepartures(session, plan, runs),
    ...bakeOrderDepartures(session, effective),
    ...stepDepartures(runs, plan, effective),
    ...weightDepartures(session, plan, effective, kitchen),
  ]
}
