import type { Plan } from '@/core/trial/plan-record.ts'
import { bakes } from './bakes.ts'
import type { Departure } from './departure.ts'
import type { Standing } from './effective-events.ts'
import type { Session } from './session-record.ts'
import type { StepRun } from './step-runs.ts'

/** Steps whose first repeat was begun on the doughs in another order than the drawn one, with how many pairs were swapped. */
export function doughOrderDepartures(
  session: Session,
  plan: Plan,
  runs: readonly StepRun[],
): Departure[] {
  return plan.steps.flatMap((step): Departure[] => {
    const begun = runs.filter(
      (run) =>
        run.step.id === step.id &&
        run.repeat === 1 &&
        run.unit.kind === 'batch' &&
        run.startedAt !== null,
    )
    const at = new Map(begun.map((run) => [run.batchId, run.startedAt ?? 0]))
    const order = compared(session.dealt.doughOrder, at)
    return order ? [{ what: 'dough-order', stepId: step.id, ...order }] : []
  })
}

/** Flights whose pieces went into the oven in another order than the drawn one. */
export function bakeOrderDepartures(session: Session, effective: readonly Standing[]): Departure[] {
  const inAt = new Map(
    bakes(session, effective).flatMap((bake) =>
      bake.inAt === null ? [] : [[bake.pieceId, bake.inAt] as const],
    ),
  )
  const flights = session.dealt.flights.toSorted((one, other) => one.number - other.number)
  return flights.flatMap((flight): Departure[] => {
    const order = compared(flight.pieceIds, inAt)
    return order ? [{ what: 'bake-order', flightId: flight.id, ...order }] : []
  })
}

/** Null when those begun were begun in the planned order; what began at one moment (a common load) counts as in order. */
function compared(all: readonly string[], at: ReadonlyMap<string, number>) {
  const planned = all.filter((id) => at.has(id))
  const when = (id: string) => at.get(id) ?? 0
  const done = planned.toSorted((one, other) => when(one) - when(other))
  const swaps = planned.reduce(
    (count, id, index) =>
      count + planned.slice(index + 1).filter((later) => when(later) < when(id)).length,
    0,
  )
  return swaps === 0 ? null : { planned, done, swaps }
}
