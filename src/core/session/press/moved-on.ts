import { bakedUnits } from '@/core/session/bake-entry.ts'
import { eventsOfSession, goneEvents, type Standing } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import { orderedEvents } from '@/core/session/ordered-events.ts'
import type { NewEvent } from './new-event.ts'

/** Why the log does not take a press: what it says was said before, or the log has moved on since the person looked. */
export interface MovedOn {
  why: 'already-begun' | 'already-ended' | 'taken-back' | 'changed'
  /** The entry of the press that the log refuses. */
  entry: NewEvent
  /** The entry of the log that stands against it; null for one that was taken back. */
  by: Standing | null
}

/**
 * A press is about a state. `log` is the trial's log as it is now, of which the sessions of the press alone are looked at;
 * `seen` are the ids of what stood when the person pressed.
 * Refused are: beginning or ending again what was begun or ended, putting into or taking out of the oven again, citing an
 * entry that no longer stands, and saying something of a line, a weight or an answer about which an entry has come that was
 * not seen. Without `seen` only what the log itself contradicts is refused. Null where the press can be taken.
 */
export function movedOn(
  log: readonly Event[],
  press: readonly NewEvent[],
  seen?: ReadonlySet<string>,
): MovedOn | null {
  const sessionIds = new Set(press.map(({ sessionId }) => sessionId))
  const standing = [...sessionIds].flatMap((id) => eventsOfSession(log, id))
  const cited = new Set(press.flatMap(({ corrects }) => corrects ?? []))
  const gone: ReadonlySet<string> =
    cited.size === 0
      ? cited
      : goneEvents(orderedEvents(log.filter(({ sessionId }) => sessionIds.has(sessionId))))
  for (const entry of press) {
    if (entry.corrects !== undefined && gone.has(entry.corrects))
      return { why: 'taken-back', entry, by: null }
    if (entry.corrects === undefined) {
      const said = sayingsOf(entry)
      const same = standing.find(
        (event) => !cited.has(event.id) && sayingsOf(event).some((one) => said.includes(one)),
      )
      if (same)
        return {
          why: beginnings.has(entry.kind) ? 'already-begun' : 'already-ended',
          entry,
          by: same,
        }
    }
    const subjects = subjectsOf(entry)
    const unseen =
      seen &&
      standing.find(
        (event) => !seen.has(event.id) && subjectsOf(event).some((one) => subjects.includes(one)),
      )
    if (unseen) return { why: 'changed', entry, by: unseen }
  }
  return null
}

const beginnings: ReadonlySet<string> = new Set(['step-started', 'bake-in'])

/** What can be true only once: one text for each beginning or end of each thing; none for what may be said again. */
function sayingsOf(entry: NewEvent): readonly string[] {
  switch (entry.kind) {
    case 'step-started':
    case 'hands-off':
    case 'step-stopped':
    case 'step-skipped':
    case 'step-added':
      return [`${entry.kind} ${entry.about.id} ${entry.stepId} ${entry.repeat}`]
    case 'bake-in':
    case 'bake-out': {
      const { kind, stepId = '', repeat = 1 } = entry
      return bakedUnits(entry).map((id) => `${kind} ${id} ${stepId} ${repeat}`)
    }
    case 'made-again':
      return [`${entry.kind} ${entry.about.id}`]
    default:
      return []
  }
}

/** What an entry says something of, where a second one made in the same state would be wrong; none where it would not. */
function subjectsOf(entry: NewEvent): readonly string[] {
  switch (entry.kind) {
    case 'step-started':
    case 'hands-off':
    case 'step-stopped':
    case 'step-skipped':
    case 'step-added':
    case 'wait-changed':
      return [`line ${entry.about.id}`]
    case 'bake-in':
    case 'bake-out':
      return bakedUnits(entry).map((id) => `line ${id}`)
    case 'weighed':
      return [`weight ${entry.about.id} ${entry.ingredientId} ${entry.prefermentId ?? ''}`]
    case 'measured':
      return [`answer ${entry.about.id} ${entry.responseId}`]
    default:
      return []
  }
}
