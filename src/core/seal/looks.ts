import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { SealRecords } from './seal-records.ts'

/** A look at what should have waited, when and at what. */
export interface Look {
  at: number
  sessionId: string | null
  reason: string | null
}

/**
 * Looks at the findings before the last planned session was unsealed: who looks early may stop when the answer pleases. With
 * fewer sessions unsealed than planned, every look so far is early.
 */
export function earlyLooks(whole: Pick<SealRecords, 'sessions' | 'events'>): Look[] {
  const effective = effectiveEvents(whole.events)
  const planned = plannedSessionsOf(whole.sessions)
  const unsealed = new Map<string, number>()
  for (const event of effective)
    if (event.kind === 'unsealed' && event.sessionId !== null && !unsealed.has(event.sessionId))
      unsealed.set(event.sessionId, event.at)
  const moments = whole.sessions
    .filter((session) => session.number <= planned)
    .map((session) => unsealed.get(session.id) ?? Number.POSITIVE_INFINITY)
  const last = moments.length < planned ? Number.POSITIVE_INFINITY : Math.max(0, ...moments)
  return effective
    .filter((event) => event.kind === 'findings-looked' && event.at < last)
    .map(asLook)
}

/** Times somebody looked up what a code stands for before unsealing. */
export function peeks(whole: Pick<SealRecords, 'events'>): Look[] {
  return effectiveEvents(whole.events)
    .filter((event) => event.kind === 'peeked')
    .map(asLook)
}

/** Sessions added after the planned ones: they were not part of the plan, and the report says so. */
export function addedSessions(whole: Pick<SealRecords, 'sessions'>): Session[] {
  return whole.sessions.filter((session) => session.number > plannedSessionsOf(whole.sessions))
}

/** How many sessions were planned when the first was begun; 0 before that. */
export function plannedSessionsOf(sessions: readonly Session[]): number {
  return sessions.toSorted((one, other) => one.number - other.number)[0]?.plannedSessions ?? 0
}

function asLook(event: Event): Look {
  const reason = event.kind === 'peeked' ? (event.reason ?? null) : null
  return { at: event.at, sessionId: event.sessionId, reason }
}
