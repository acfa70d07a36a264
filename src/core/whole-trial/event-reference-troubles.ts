import type { Event } from '@/core/session/event-record.ts'
import { checkEvent } from './log-references.ts'
import { References, type ReferenceTrouble } from './references.ts'
import type { WholeTrial } from './whole-trial.ts'

/**
 * What events about to be logged name that is not there, each by JSON Pointer into the entries of this press. `known` holds
 * the ids of the events they may cite besides each other; of the trial only what its events can name is looked at.
 */
export function eventReferenceTroubles(
  trial: Omit<WholeTrial, 'events' | 'ballots'>,
  events: readonly Event[],
  known: readonly string[],
): ReferenceTrouble[] {
  const references = new References()
  const eventIds = new Set([...known, ...events.map((event) => event.id)])
  references.distinct('/events', events)
  const whole: WholeTrial = { ...trial, events: [...events], ballots: [] }
  for (const [index, event] of events.entries())
    checkEvent(references, whole, event, `/events/${index}`, eventIds)
  return references.troubles
}
