import { type Event, eventShape } from '@/core/session/event-record.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { trialShape } from '@/core/trial/trial-record.ts'
import { eventReferenceTroubles } from '@/core/whole-trial/event-reference-troubles.ts'
import { wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { refuseReferences } from './change-trial.ts'
import { checked } from './checked.ts'
import { nextCounts } from './next-counts.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'
import { namedKitchen } from './stored-trial.ts'

/**
 * Appends events of one trial to its log, all or none, in the order given. Each gets an id, this device, its next running
 * number, the time (its own `at` when it has one) and the zone. A press at the bench must not wait for a long log: the new
 * entries and what they name are checked, the entries that are there are not read again; the home list makes the trial's
 * line anew when it is next read.
 */
export async function logEvents(
  store: Store,
  { now, zone, newId }: NotebookServices,
  events: readonly NewEvent[],
): Promise<Event[]> {
  const [trialId, ...others] = new Set(events.map((event) => event.trialId))
  if (trialId === undefined) return []
  if (others.length > 0) throw new NotebookFailure('refused-record', 'events of several trials')
  return await store.transaction('rw', store.tables, async () => {
    const trial = await store.trials.get(trialId)
    if (!trial) throw new NotebookFailure('no-such-trial', trialId)
    const { device, first } = await nextCounts(store, events.length)
    const at = now()
    const logged = events.map((event, index) =>
      checked(eventShape, { at, ...event, id: newId(), device, count: first + index, zone }),
    )
    await refuseUnknown(store, trial, logged)
    await store.events.bulkAdd(logged)
    await store.trials.put(checked(trialShape, { ...trial, revision: trial.revision + 1 }))
    if (store.held?.trial.id === trialId)
      store.held = { ...store.held, events: [...store.held.events, ...logged] }
    return logged
  })
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
