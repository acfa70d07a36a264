import type { Event } from './event-record.ts'

/** What was worked out of a log, and where the log ended then. */
interface Known<Answer> {
  answer: Answer
  members: Set<Event>
  ids: Set<string>
  /** Of every device the last running number and the latest stamp (UTC ms). */
  ends: Map<string, { count: number; at: number }>
}

/**
 * Answers a question about a log. Most logs that are asked about are one that was asked about before and then grew at its end
 * by one press: new entries of one device, each later than all before by its number there and by its stamp. Then `grown` is
 * given the answer of before and the new entries in their order; where it gives null, and for every other log, the whole log
 * is answered anew. What is remembered changes how long an answer takes and never what it is.
 */
export function answeredAsGrown<Answer>(
  whole: (events: readonly Event[]) => Answer,
  grown: (before: Answer, more: readonly Event[]) => Answer | null,
): (events: readonly Event[]) => Answer {
  /** By one entry of the log, which stays in it whatever is written behind. */
  const known = new WeakMap<Event, Known<Answer>>()
  return (events) => {
    const kept = events.find((event) => known.has(event))
    const before = kept && known.get(kept)
    const more = before && newAtEnd(before, events)
    const further = before && more && grown(before.answer, more)
    if (before && more && further !== null && further !== undefined) {
      before.answer = further
      for (const event of more) take(before, event)
      return further
    }
    const [first] = events
    const fresh: Known<Answer> = {
      ...{ answer: whole(events), members: new Set(), ids: new Set(), ends: new Map() },
    }
    for (const event of events) take(fresh, event)
    if (first) known.set(kept ?? first, fresh)
    return fresh.answer
  }
}

function take<Answer>({ members, ids, ends }: Known<Answer>, event: Event): void {
  const end = ends.get(event.device)
  members.add(event)
  ids.add(event.id)
  ends.set(event.device, {
    count: Math.max(event.count, end?.count ?? event.count),
    at: Math.max(event.at, end?.at ?? event.at),
  })
}

/** The entries that a log has more than before, in their order, if all of them come behind what it had; else null. */
function newAtEnd<Answer>(
  { members, ids, ends }: Known<Answer>,
  events: readonly Event[],
): Event[] | null {
  const more = events
    .filter((event) => !members.has(event))
    .toSorted((one, other) => one.count - other.count)
  if (events.length !== members.size + more.length) return null
  const [first] = more
  if (!first) return []
  const end = ends.get(first.device)
  let count = end?.count ?? Number.NEGATIVE_INFINITY
  const begins = Math.max(first.at, end?.at ?? first.at)
  for (const [device, { at }] of ends) if (device !== first.device && at >= begins) return null
  for (const event of more) {
    if (event.device !== first.device || event.count <= count || ids.has(event.id)) return null
    count = event.count
  }
  return new Set(more.map(({ id }) => id)).size === more.length ? more : null
}
