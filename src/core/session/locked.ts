import type { Plan } from '@/core/trial/plan-record.ts'
import { effectiveEvents } from './effective-events.ts'
import type { Event, EventOf } from './event-record.ts'

/**
 * True once expectation, main response and the number of sessions are fixed: from the first mix on. Either the lock itself
 * stands in the log, or the start of a mixing step does.
 */
export function locked(events: readonly Event[], plans: readonly Plan[]): boolean {
  return effectiveEvents(events).some(
    (event) => event.kind === 'lock' || (event.kind === 'step-started' && isMix(event, plans)),
  )
}

/** True when logging this event must log the lock with it: it starts the first mix of the trial. */
export function needsLock(
  events: readonly Event[],
  plans: readonly Plan[],
  event: { kind: string; stepId?: string },
): boolean {
  return event.kind === 'step-started' && isMix(event, plans) && !locked(events, plans)
}

function isMix(event: Partial<Pick<EventOf<'step-started'>, 'stepId'>>, plans: readonly Plan[]) {
  return plans.some((plan) =>
    plan.steps.some((step) => step.id === event.stepId && step.kind === 'mix'),
  )
}
