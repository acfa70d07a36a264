import { bakedUnits } from '@/core/session/bake-entry.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'

/** Why something cannot have happened when it is said to have; moments as UTC ms. */
export type ImpossibleTime =
  | { why: 'in-the-future' }
  | { why: 'before-the-session' }
  | { why: 'ends-before-it-begins'; beganAt: number }
  | { why: 'begins-after-it-ends'; endedAt: number }
  | { why: 'before-hands-off' | 'after-hands-off'; handsOffAt: number }

/**
 * Why an entry of a session's log cannot have happened at `at` (UTC ms): after `now`, before the session was dealt, or out of the
 * order of its step, which begins, has the hands off it and ends, as a bake begins and ends. Null where it can. Entries of the same
 * moment are in order.
 */
export function impossibleTime(
  event: Event,
  at: number,
  { log, now, dealtAt }: { log: readonly Standing[]; now: number; dealtAt: number },
): ImpossibleTime | null {
  if (at > now) return { why: 'in-the-future' }
  if (at < dealtAt) return { why: 'before-the-session' }
  const byMoment = log.toSorted((one, other) => one.at - other.at)
  const before = byMoment.findLast((other) => inOrder(other, event))
  if (before && at < before.at)
    return before.kind === 'hands-off'
      ? { why: 'before-hands-off', handsOffAt: before.at }
      : { why: 'ends-before-it-begins', beganAt: before.at }
  const after = byMoment.find((other) => inOrder(event, other))
  if (after && at > after.at)
    return after.kind === 'hands-off'
      ? { why: 'after-hands-off', handsOffAt: after.at }
      : { why: 'begins-after-it-ends', endedAt: after.at }
  return null
}

const stepOrder: readonly Event['kind'][] = ['step-started', 'hands-off', 'step-stopped']

/** Whether the one entry must come before the other: of the same repeat of the same step, or of the same bake. */
function inOrder(one: Event, other: Event): boolean {
  if (one.kind === 'bake-in' && other.kind === 'bake-out') {
    const units = bakedUnits(other)
    return isSameRepeat(one, other) && bakedUnits(one).some((id) => units.includes(id))
  }
  const first = stepOrder.indexOf(one.kind)
  return (
    first >= 0 &&
    first < stepOrder.indexOf(other.kind) &&
    one.about.id === other.about.id &&
    isSameRepeat(one as OfStep, other as OfStep)
  )
}

interface OfStep {
  stepId?: string
  repeat?: number
}

/** Of the same repeat of the same step; an entry of the oven that names no step goes with any. */
const isSameRepeat = (one: OfStep, other: OfStep) =>
  one.stepId === undefined ||
  other.stepId === undefined ||
  (one.stepId === other.stepId && one.repeat === other.repeat)
