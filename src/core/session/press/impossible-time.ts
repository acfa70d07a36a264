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
  const partner = log.find((other) => isOtherEnd(event, other))
  if (!partner) return null
  if (isBeginning(event))
    return at > partner.at ? { why: 'begins-after-it-ends', endedAt: partner.at } : null
  return at < partner.at ? { why: 'ends-before-it-begins', beganAt: partner.at } : null
}

const isBeginning = ({ kind }: Event) => kind === 'step-started' || kind === 'bake-in'

/** Whether one entry begins what the other ends. */
function isOtherEnd(one: Event, other: Event): boolean {
  if (one.about.id !== other.about.id) return false
  const kinds = new Set([one.kind, other.kind])
  if (kinds.has('bake-in') && kinds.has('bake-out')) return true
  return (
    kinds.has('step-started') &&
    kinds.has('step-stopped') &&
    'stepId' in one &&
    'stepId' in other &&
    one.stepId === other.stepId &&
    one.repeat === other.repeat
  )
}
