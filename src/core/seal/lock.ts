import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { EventKind } from '@/core/session/event-record.ts'
import { orderedEvents } from '@/core/session/ordered-events.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { SealRecords } from './seal-records.ts'

/** What the lock reads of a trial. */
export type LockRecords = Pick<SealRecords, 'plans' | 'events' | 'ballots'>

/** Entries that say that dough was handled, or more: while one of them stands, so does the lock. */
const work: ReadonlySet<EventKind> = new Set<EventKind>([
  ...(['weighed', 'worked-in', 'step-started', 'hands-off', 'step-stopped', 'rise'] as const),
  ...(['bake-in', 'bake-out', 'mass', 'size', 'measured', 'failure'] as const),
  ...(['served', 'tasting-closed', 'unsealed', 'peeked'] as const),
])

/**
 * True while expectation, main response and the number of sessions are fixed: a mix was begun at some time, taken back or not,
 * and something that was weighed, begun, baked or tasted still stands. So an undo that leaves nothing made lifts the lock, and
 * no taking back does while there is a dough.
 */
export function locked(records: LockRecords): boolean {
  const { plans, events, ballots } = records
  if (!events.some((event) => event.kind === 'lock' || beginsMix(event, plans))) return false
  return ballots.length > 0 || effectiveEvents(events).some(({ kind }) => work.has(kind))
}

/** Since when it is locked (UTC ms): the last lock that was written, else the first mix; null while it is not. */
export function lockedSince(records: LockRecords): number | null {
  if (!locked(records)) return null
  const ordered = orderedEvents(records.events)
  const lock = ordered.findLast((event) => event.kind === 'lock')
  return (lock ?? ordered.find((event) => beginsMix(event, records.plans)))?.at ?? null
}

/** True when an entry begins a mix of one of the plans: with the first, the lock is written. */
export function beginsMix(
  entry: { kind: string; stepId?: string },
  plans: readonly Plan[],
): boolean {
  return (
    entry.kind === 'step-started' &&
    plans.some((plan) => plan.steps.some((step) => step.id === entry.stepId && step.kind === 'mix'))
  )
}
