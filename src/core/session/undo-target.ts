import { goneEvents, type Standing } from './effective-events.ts'
import type { Event } from './event-record.ts'
import { lasts, unsealedSessions } from './lasting.ts'
import { orderedEvents } from './ordered-events.ts'

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
  const ordered = orderedEvents(events)
  const gone = goneEvents(ordered)
  const unsealed = unsealedSessions(events)
  const open = ordered.filter(
    (event): event is Standing =>
      event.device === device &&
      event.kind !== 'void' &&
      event.about.kind !== 'taster' &&
      (sessionId === undefined || event.sessionId === sessionId) &&
      !gone.has(event.id) &&
      !lasts(event, unsealed),
  )
  return open.at(-1) ?? null
}
