import type { Event, EventKind } from './event-record.ts'

/** A look cannot be unlooked, a lock not unlocked, codes that were given away are out, and a dough that was made again is there. */
const lasting: ReadonlySet<EventKind> = new Set<EventKind>([
  'lock',
  'unsealed',
  'peeked',
  'findings-looked',
  'device-taken',
  'made-again',
  'plates-turned',
])

/**
 * True for an entry that lasts, so that no later one takes it back or corrects it: by its kind, or as the early close of a
 * tasting that was unsealed by then, since the report gives its reason. It stands beside the log's shape because the log as it
 * stands is read by it; what is built on it is in core/seal, whose SPEC.md says what is promised.
 */
export function lasts(
  { kind, sessionId }: Pick<Event, 'kind' | 'sessionId'>,
  unsealedSessionIds: ReadonlySet<string | null> = new Set(),
): boolean {
  return lasting.has(kind) || (kind === 'tasting-closed' && unsealedSessionIds.has(sessionId))
}

/** The sessions that a log says were unsealed. */
export function unsealedSessions(events: readonly Event[]): Set<string | null> {
  return new Set(events.flatMap(({ kind, sessionId }) => (kind === 'unsealed' ? [sessionId] : [])))
}
