import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'

/** When expectation and main response were locked (UTC ms): the first lock that was not taken back; null before the first mix. */
export function lockedSince(events: readonly Event[]): number | null {
  const locks = effectiveEvents(events).filter((event) => event.kind === 'lock')
  const moments = locks.map((event) => event.at)
  return moments.length === 0 ? null : Math.min(...moments)
}
