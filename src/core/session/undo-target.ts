import { effectiveEvents, eventsOfSession, type Standing } from './effective-events.ts'
import type { Event } from './event-record.ts'
import { lasts, unsealedSessions } from './lasting.ts'

/**
 * The last thing this device logged that still stands and can be taken back; null when there is none. Undoing again and again
 * walks back through the log; what lasts is passed over, and so is who came to the table and left it, which is marked
 * where the tasters are listed.
 */
export function undoTarget(
  events: readonly Event[],
  device: string,
  sessionId?: string,
): Standing | null {
  const unsealed = unsealedSessions(events)
  const standing =
    sessionId === undefined ? effectiveEvents(events) : eventsOfSession(events, sessionId)
  const last = standing.findLast(
    (event) => event.device === device && event.about.kind !== 'taster' && !lasts(event, unsealed),
  )
  return last ?? null
}
