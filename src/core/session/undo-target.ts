import { goneEvents, type Standing } from './effective-events.ts'
import type { Event, EventKind } from './event-record.ts'
import { orderedEvents } from './ordered-events.ts'

/** A look cannot be unlooked and a lock not unlocked: these stay in the log for good. */
const lasting: ReadonlySet<EventKind> = new Set<EventKind>([
  'lock',
  'unsealed',
  'peeked',
  'findings-looked',
])

/**
 * The last thing this device logged that still stands and can be taken back; null when there is none. Undoing again and again
 * walks back through the log; locks and looks are passed over, and so is who came to the table and left it, which is marked
 * where the tasters are listed.
 */
export function undoTarget(
  events: readonly Event[],
  device: string,
  sessionId?: string,
): Standing | null {
  const ordered = orderedEvents(events)
  const gone = goneEvents(ordered)
  const open = ordered.filter(
    (event): event is Standing =>
      event.device === device &&
      event.kind !== 'void' &&
      event.about.kind !== 'taster' &&
      (sessionId === undefined || event.sessionId === sessionId) &&
      !gone.has(event.id) &&
      !lasting.has(event.kind),
  )
  return open.at(-1) ?? null
}
