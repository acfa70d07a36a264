import type { Event } from '@/core/session/event-record.ts'
import { lasts, unsealedSessions } from '@/core/session/lasting.ts'

/** True when `entry` would take back or correct what lasts. `events` is the log that the entry would come to. */
export function breaksSeal(entry: Pick<Event, 'corrects'>, events: readonly Event[]): boolean {
  const cited = events.find((event) => event.id === entry.corrects)
  return cited !== undefined && lasts(cited, unsealedSessions(events))
}
