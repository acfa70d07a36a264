import { keptAnswer } from '@/core/record/kept-answer.ts'
import { lostBecause } from '@/core/seal/sealed.ts'
import type { TastingRecords } from '@/core/tasting/tasting-records.ts'

/** A session of which nobody can tell any more what lay under its cups or plates, and why. */
export interface LostSession {
  sessionId: string
  number: number
  /** The tickets of its cups: which dough was which level. Else the letters under its plates: which dough was scored. */
  what: 'tickets' | 'letters'
  because: string
}

/** The sessions that were ended without anybody knowing what lay under their cups or plates, in order. */
export function lostSessions({
  sessions,
  events,
}: Pick<TastingRecords, 'sessions' | 'events'>): LostSession[] {
  return sessions
    .flatMap(({ id, number, dealt }) => {
      const because = lostBecause(events, id)
      const what = dealt.tickets ? ('tickets' as const) : ('letters' as const)
      return because === null ? [] : [{ sessionId: id, number, what, because }]
    })
    .toSorted((one, other) => one.number - other.number)
}

/**
 * A trial as far as its levels can be told: without the sessions of which nobody knows which dough was which, and without the
 * tasting of those whose plates nobody can tell apart. Whatever compares levels reads this; where nothing was lost it is the trial
 * itself, the same object.
 */
export function toldTrial<Records extends TastingRecords>(whole: Records): Records {
  return told(whole, null) as Records
}

const told = keptAnswer((whole: TastingRecords, _: null): TastingRecords => {
  const lost = lostSessions(whole)
  if (lost.length === 0) return whole
  const untasted = new Set<string | null>(lost.map(({ sessionId }) => sessionId))
  const gone = new Set<string | null>(
    lost.flatMap(({ sessionId, what }) => (what === 'tickets' ? [sessionId] : [])),
  )
  return {
    ...whole,
    sessions: whole.sessions.filter(({ id }) => !gone.has(id)),
    events: whole.events.filter(
      ({ sessionId, about }) =>
        !gone.has(sessionId) && !(about.kind === 'taster' && untasted.has(sessionId)),
    ),
    ballots: whole.ballots.filter(({ sessionId }) => !untasted.has(sessionId)),
  }
})
