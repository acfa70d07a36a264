import { eventsOfSession } from './effective-events.ts'
import type { Event, EventOf } from './event-record.ts'
import { failuresOf } from './failures.ts'
import type { Session } from './session-record.ts'

/** In which ways counted pieces of a level failed, each once, by the level's id. */
export function failureKinds(records: {
  sessions: readonly Session[]
  events: readonly Event[]
}): Map<string, EventOf<'failure'>['what'][]> {
  const kinds = new Map<string, EventOf<'failure'>['what'][]>()
  for (const session of records.sessions)
    for (const { what, pieceIds } of failuresOf(
      session,
      eventsOfSession(records.events, session.id),
    ))
      for (const { id, role, levelId } of session.pieces) {
        const own = kinds.get(levelId) ?? []
        if (role !== 'counted' || !pieceIds.includes(id) || own.includes(what)) continue
        kinds.set(levelId, [...own, what])
      }
  return kinds
}
