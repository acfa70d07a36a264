import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'
import { writtenFirst } from '@/core/trial/written-first.ts'

/** The parts of a plan that stand as they were written from the first mix on. */
export type LockedPart =
  | 'expectation'
  | 'written-first'
  | 'planned-sessions'
  | 'main-response'
  | 'better'
  | 'margin'

/**
 * What of a locked plan another one would change; nothing where the lock allows it. A main response or a margin that was not
 * chosen yet may still be.
 */
export function lockedChanges(before: Plan, next: Plan): LockedPart[] {
  const [main, now] = [mainOf(before), mainOf(next)]
  const kept = now?.id === main?.id
  const changes: Record<LockedPart, boolean> = {
    expectation: !same(before.expectation, next.expectation),
    'written-first': !same(writtenFirst(before), writtenFirst(next)),
    'planned-sessions': before.plannedSessions !== next.plannedSessions,
    'main-response': main !== undefined && !kept,
    better: main !== undefined && kept && !same(main.better, now?.better),
    margin: main !== undefined && kept && main.margin !== null && main.margin !== now?.margin,
  }
  return (Object.keys(changes) as LockedPart[]).filter((part) => changes[part])
}

const mainOf = ({ responses, mainResponseId }: Plan): Response | undefined =>
  responses.find(({ id }) => id === mainResponseId)

const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other)
