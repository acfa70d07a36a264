import * as z from 'zod/mini'
import { idShape } from '@/core/record/id-and-stamp.ts'
import { breaksSeal } from '@/core/seal/breaks-seal.ts'
import { sealOf } from '@/core/seal/sealed.ts'
import { doughAgain } from '@/core/session/dough-again.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { type Event, type EventKind, eventShape } from '@/core/session/event-record.ts'
import { photoShape } from '@/core/session/photo-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import { storedSettings } from './next-counts.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { Store } from './store.ts'

/** One entry of another device's log of this trial, as it comes over an open table. */
export const arrivingEntryShape = z.strictObject({
  event: eventShape,
  /** The record of the photo that the entry speaks of; its picture stays where it was taken. */
  photo: z.exactOptional(photoShape),
  /** Of a dough made again: the ids that device gave to the new dough, its pieces and loads, in that order. */
  newIds: z.exactOptional(z.array(idShape).check(z.maxLength(500))),
})
export type ArrivingEntry = z.infer<typeof arrivingEntryShape>

export type TookEntry =
  | { ok: true; already: boolean }
  /** `bakers-own`: such an entry is made on the baker's device alone. `lasting`: it would take back what lasts. */
  | { ok: false; reason: 'bakers-own' | 'lasting' | 'does-not-fit' }

/** Entries that give codes away or end a tasting, and what the baker's own device says of itself. */
const bakersOwn: ReadonlySet<EventKind> = new Set<EventKind>([
  ...(['unsealed', 'tasting-closed', 'plates-turned', 'plates-shuffled'] as const),
  ...(['device-taken', 'findings-looked'] as const),
])

/**
 * Takes an entry of another device in by its id: the same again changes nothing. Like an entry out of a file it is no press, so
 * that two devices that pressed the same thing both stand and are told. `laterMilliseconds` is how much later this device's
 * clock stands than the other's; from a second on the entry bears this clock's time, with the difference beside it.
 */
export async function takeEntry(
  store: Store,
  trialId: string,
  { event, photo, newIds }: ArrivingEntry,
  laterMilliseconds: number,
): Promise<TookEntry> {
  if (event.trialId !== trialId) return { ok: false, reason: 'does-not-fit' }
  if (bakersOwn.has(event.kind)) return { ok: false, reason: 'bakers-own' }
  if ((await store.events.get(event.id)) !== undefined) return { ok: true, already: true }
  const told = byThisClock(event, laterMilliseconds)
  try {
    return await changeTrial<TookEntry>(store, trialId, async (whole) => {
      const { device } = await storedSettings(store)
      // What bears this device's name and is not here was never written here.
      if (event.device === device) throw new NotebookFailure('refused-record', 'of this device')
      if (breaksSeal(event, whole.events)) throw new NotebookFailure('lasting', event.kind)
      const sessions = event.kind === 'made-again' ? withDough(whole, event, newIds ?? []) : []
      const photos = photo && !whole.photos.some(({ id }) => id === photo.id) ? [photo] : []
      await store.events.add(told)
      await store.sessions.bulkPut(sessions)
      await store.photos.bulkAdd(photos)
      const changed = new Map(sessions.map((each) => [each.id, each]))
      return {
        now: {
          events: [...whole.events, told],
          sessions: whole.sessions.map((each) => changed.get(each.id) ?? each),
          photos: [...whole.photos, ...photos],
        },
        told: { ok: true, already: false },
      }
    })
  } catch (failure) {
    if (!(failure instanceof NotebookFailure)) throw failure
    if (failure.reason === 'lasting') return { ok: false, reason: 'lasting' }
    if (failure.reason === 'refused-record') return { ok: false, reason: 'does-not-fit' }
    throw failure
  }
}

/** Under so many milliseconds two clocks are called the same: it is no more than the way of a message. */
export const sameClock = 1000

function byThisClock(event: Event, laterMilliseconds: number): Event {
  const later = Math.round(laterMilliseconds)
  if (Math.abs(later) < sameClock) return event
  return checked(eventShape, { ...event, at: Math.max(0, event.at + later), clockLater: later })
}

/** The session with the dough that the other device made again, under the ids that it has there. */
function withDough(whole: WholeTrial, event: Event, newIds: readonly string[]) {
  const session = whole.sessions.find(({ id }) => id === event.sessionId)
  if (!session) throw new NotebookFailure('refused-record', 'no such session')
  const ids = newIds[Symbol.iterator]()
  const again = doughAgain(session, event.about.id, {
    log: eventsOfSession(whole.events, session.id),
    tasted: sealOf(whole, session.id) !== 'not-begun',
    newId: () => {
      const next = ids.next()
      if (next.done) throw new NotebookFailure('refused-record', 'an id is missing')
      return next.value
    },
  })
  if (!again.ok) throw new NotebookFailure('refused-record', again.reason)
  return [again.session]
}
