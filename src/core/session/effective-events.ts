import { keptAnswer } from '@/core/record/kept-answer.ts'
import type { Event } from './event-record.ts'
import { answeredAsGrown } from './grown-log.ts'
import { lasts } from './lasting.ts'
import { orderedEvents } from './ordered-events.ts'

/** An event that still stands: everything but a void, which only takes others back. */
export type Standing = Exclude<Event, { kind: 'void' }>

/**
 * The log as it stands: events taken back are gone, corrected ones give way to their correction, in log order. A void that is
 * itself taken back lets its event stand again; of several corrections of one event the last counts. Citations that run in a
 * ring, which no notebook writes, take nothing back, and nothing takes back an entry that lasts, whatever a file says.
 */
export function effectiveEvents(events: readonly Event[]): Standing[] {
  const ordered = orderedEvents(events)
  const gone = goneEvents(ordered)
  return ordered.filter((event): event is Standing => event.kind !== 'void' && !gone.has(event.id))
}

/** Effective events of one session, worked out once for a log of this length. */
export function eventsOfSession(
  events: readonly Event[],
  sessionId: string | null,
): readonly Standing[] {
  return sessionsOf(events, events.length)(sessionId)
}

const sessionsOf = keptAnswer((events: readonly Event[], _length: number) => {
  const standing = new Map<string | null, readonly Standing[]>()
  return (sessionId: string | null): readonly Standing[] => {
    const known = standing.get(sessionId)
    if (known) return known
    const found = standingOf(events.filter((event) => event.sessionId === sessionId)).standing
    standing.set(sessionId, found)
    return found
  }
})

/** What stands of one session's log, with the ids that its entries cite; after a press only the new entries are looked at. */
const standingOf = answeredAsGrown(
  (events: readonly Event[]): { standing: readonly Standing[]; cited: ReadonlySet<string> } => ({
    standing: effectiveEvents(events),
    cited: new Set(events.flatMap(({ corrects }) => corrects ?? [])),
  }),
  ({ standing, cited }, more) => {
    const plain = more.filter(isPlain)
    const touches = plain.length < more.length || plain.some(({ id }) => cited.has(id))
    return touches ? null : { standing: [...standing, ...plain], cited }
  },
)

/** An entry that touches no other: it takes nothing back, corrects nothing and makes nothing last. */
const isPlain = (event: Event): event is Standing =>
  event.corrects === undefined && event.kind !== 'void' && event.kind !== 'unsealed'

/** Ids of the events (voids among them) that no longer stand. */
export function goneEvents(ordered: readonly Event[]): Set<string> {
  // In a log in which nothing cites anything, which is most of them, everything stands.
  if (ordered.every(({ corrects }) => corrects === undefined)) return new Set()
  const byId = new Map(ordered.map((event) => [event.id, event]))
  const voids = new Map<string, Event[]>()
  const corrections = new Map<string, Event[]>()
  const unsealed = new Set<string | null>()
  for (const event of ordered) {
    if (event.kind === 'unsealed') unsealed.add(event.sessionId)
    if (event.corrects === undefined || citesItself(event, byId)) continue
    const cited = byId.get(event.corrects)
    if (cited && lasts(cited, unsealed)) continue
    const citing = event.kind === 'void' ? voids : corrections
    citing.set(event.corrects, [...(citing.get(event.corrects) ?? []), event])
  }
  const correcting = (id: string) => corrections.get(id) ?? []
  const isTakenBack = remembered((event) =>
    (voids.get(event.id) ?? []).some((one) => !isTakenBack(one)),
  )
  /** It speaks for what it corrects: by itself, or through a correction of its own. */
  const speaks = remembered((event) => !isTakenBack(event) || correcting(event.id).some(speaks))
  /** Another correction of the same event, or of one further back, came later. */
  const isOutdone = remembered((event) => {
    const cited = event.corrects === undefined ? undefined : byId.get(event.corrects)
    if (!cited) return false
    const rivals = correcting(cited.id)
    const at = rivals.indexOf(event)
    return at >= 0 && (rivals.slice(at + 1).some(speaks) || isOutdone(cited))
  })
  const stands = (event: Event) =>
    !isTakenBack(event) && !isOutdone(event) && !correcting(event.id).some(speaks)
  // An event that neither cites nor is cited stands: of a long log only the others need be looked into.
  const inQuestion = ordered.filter(
    ({ id, corrects }) => corrects !== undefined || voids.has(id) || corrections.has(id),
  )
  return new Set(
    inQuestion.filter((event) => !lasts(event) && !stands(event)).map((event) => event.id),
  )
}

function remembered(answer: (event: Event) => boolean): (event: Event) => boolean {
  const known = new Map<string, boolean>()
  return (event) => {
    const found = known.get(event.id) ?? answer(event)
    known.set(event.id, found)
    return found
  }
}

function citesItself(event: Event, byId: ReadonlyMap<string, Event>): boolean {
  const seen = new Set<string>()
  let cited = event.corrects
  while (cited !== undefined && !seen.has(cited)) {
    if (cited === event.id) return true
    seen.add(cited)
    cited = byId.get(cited)?.corrects
  }
  return false
}
