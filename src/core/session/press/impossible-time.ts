import { bakedUnits } from '@/core/session/bake-entry.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'

/** Why something cannot have happened when it is said to have. */
export type ImpossibleTime =
  | { why: 'in-the-future' }
  | { why: 'before-the-session' }
  | { why: 'ends-before-it-begins'; beganAt: number }
  | { why: 'begins-after-it-ends'; endedAt: number }

/**
 * Why an entry of a session's log cannot have happened at `at` (UTC ms): after `now`, before the session was dealt, an end
 * before its beginning, a beginning after its end. Null where it can. Entries of the same moment are in order.
 */
export function impossibleTime(
  event: Event,
  at: number,
  { log, now, dealtAt }: { log: readonly Standing[]; now: number; dealtAt: number },
): ImpossibleTime | null {
  if (at > now) return { why: 'in-the-future' }
  if (at < dealtAt) return { why: 'before-the-session' }
  const others = log.filter((other) => isOtherEnd(event, other)).map((other) => other.at)
  if (others.length === 0) return null
  const [first, last] = [Math.min(...others), Math.max(...others)]
  if (isBeginning(event)) return at > first ? { why: 'begins-after-it-ends', endedAt: first } : null
  return at < last ? { why: 'ends-before-it-begins', beganAt: last } : null
}

const isBeginning = ({ kind }: Event) => kind === 'step-started' || kind === 'bake-in'

/** Whether one entry begins what the other ends. */
function isOtherEnd(one: Event, other: Event): boolean {
  const [begin, end] = isBeginning(one) ? [one, other] : [other, one]
  if (begin.kind === 'bake-in' && end.kind === 'bake-out') {
    const units = bakedUnits(end)
    return isSameRepeat(begin, end) && bakedUnits(begin).some((id) => units.includes(id))
  }
  return (
    begin.kind === 'step-started' &&
    end.kind === 'step-stopped' &&
    begin.about.id === end.about.id &&
    isSameRepeat(begin, end)
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
