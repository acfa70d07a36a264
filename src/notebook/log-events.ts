import { type Event, eventShape } from '@/core/session/event-record.ts'
import { movedOn } from '@/core/session/press/moved-on.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { trialShape } from '@/core/trial/trial-record.ts'
import { eventReferenceTroubles } from '@/core/whole-trial/event-reference-troubles.ts'
import { wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { refuseReferences } from './change-trial.ts'
import { checked } from './checked.ts'
import { lockBeside, refuseBrokenSeal } from './keep-seal.ts'
import { MovedOnFailure } from './moved-on-failure.ts'
import { nextCounts } from './next-counts.ts'
import { NotebookFailure } from './notebook-failure.ts'
import { itemsNow } from './renewed-trial.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'
import { namedKitchen } from './stored-trial.ts'

/**
 * Appends events of one trial to its log, all or none, in the order given. Each gets an id, this device, its next running
 * number, the time (its own `at` when it has one) and the zone. What the log contradicts, or has moved on from since what the
 * person had `seen`, is refused, and so is what the seal forbids (src/core/seal/SPEC.md); with the first mix the lock is written
 * in front. A press at the bench must not wait for a long log: the new
 * entries and what they name are checked, the entries that are there are not read again; the home list makes the trial's
 * line anew when it is next read.
 */
export async function logEvents(
  store: Store,
  { now, zone, newId }: NotebookServices,
  events: readonly NewEvent[],
  seen?: ReadonlySet<string>,
): Promise<Event[]> {
  const [trialId, ...others] = new Set(events.map((event) => event.trialId))
  if (trialId === undefined) return []
  if (others.length > 0) throw new NotebookFailure('refused-record', 'events of several trials')
  return await store.transaction('rw', store.tables, async () => {
    const trial = await store.trials.get(trialId)
    if (!trial) throw new NotebookFailure('no-such-trial', trialId)
    await refuseMovedOn(store, trialId, events, seen)
    const entries = [...(await lockBeside(store, trialId, events)), ...events]
    const { device, first } = await nextCounts(store, entries.length)
    const at = now()
    const logged = entries.map((event, index) =>
      checked(eventShape, { at, ...event, id: newId(), device, count: first + index, zone }),
    )
    await refuseUnknown(store, trial, logged)
    await refuseBrokenSeal(store, trialId, entries)
    await store.events.bulkAdd(logged)
    await store.trials.put(checked(trialShape, { ...trial, revision: trial.revision + 1 }))
    if (store.held?.trial.id === trialId)
      store.held = { ...store.held, events: [...store.held.events, ...logged] }
    return logged.slice(-events.length)
  })
}

/** Refuses a press that the log of its session contradicts or has moved on from; only what is not held of the log is read. */
async function refuseMovedOn(
  store: Store,
  trialId: string,
  press: readonly NewEvent[],
  seen: ReadonlySet<string> | undefined,
): Promise<void> {
  const held = store.held?.trial.id === trialId ? store.held.events : []
  const log = await itemsNow(store.events, trialId, held)
  const sessionIds = new Set(press.map(({ sessionId }) => sessionId))
  const found = movedOn(
    log.filter(({ sessionId }) => sessionIds.has(sessionId)),
    press,
    seen,
  )
  if (found) throw new MovedOnFailure(found)
}

/** Refuses entries that name something their trial does not have; of its log only the entries they cite are read. */
async function refuseUnknown(
  store: Store,
  trial: { id: string },
  logged: readonly Event[],
): Promise<void> {
  const trialId = trial.id
  const [plans, sessions, photos, cited] = await Promise.all([
    store.plans.where({ trialId }).toArray(),
    store.sessions.where({ trialId }).toArray(),
    store.photos.where({ trialId }).toArray(),
    store.events.bulkGet(logged.flatMap(({ corrects }) => corrects ?? [])),
  ])
  const kitchen = await namedKitchen(store, { plans, sessions, events: [...logged], ballots: [] })
  const { events, ballots, ...rest } = checked(
    wholeTrialShape,
    { trial, plans, sessions, photos, kitchen, events: [], ballots: [] },
    'damaged',
  )
  const known = cited.flatMap((event) => (event?.trialId === trialId ? [event.id] : []))
  refuseReferences(eventReferenceTroubles(rest, logged, known))
}
