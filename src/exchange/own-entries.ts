import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Entry } from './messages.ts'

/** What this device wrote of a trial since its running number `putOut`, in its order, as it is handed over. */
export function ownEntries(
  whole: WholeTrial,
  device: string,
  putOut: number,
): { count: number; eventId: string; entry: Entry }[] {
  return whole.events
    .filter((event) => event.device === device && event.count > putOut)
    .toSorted((a, b) => a.count - b.count)
    .map((event) => ({ count: event.count, eventId: event.id, entry: entryOf(whole, event) }))
}

function entryOf({ sessions, photos }: WholeTrial, event: Event): Entry {
  if (event.kind === 'photo') {
    const photo = photos.find(({ id }) => id === event.photoId)
    return { kind: 'log', event, ...(photo ? { photo } : {}) }
  }
  if (event.kind !== 'made-again') return { kind: 'log', event }
  const session = sessions.find(({ id }) => id === event.sessionId)
  return { kind: 'log', event, newIds: session ? newIdsOf(session, event.batchId) : [] }
}

/** The ids that came with a dough made again: its own, its pieces', and those of the loads that hold them. */
function newIdsOf({ pieces, dealt }: Session, batchId: string): string[] {
  const own = pieces.filter((piece) => piece.batchId === batchId).map(({ id }) => id)
  const loads = dealt.loads
    .filter(({ pieceIds }) => pieceIds.some((id) => own.includes(id)))
    .toSorted((a, b) => a.number - b.number)
  return [batchId, ...own, ...loads.map(({ id }) => id)]
}
