import { Dexie } from 'dexie'
import { type Event, eventShape } from '@/core/session/event-record.ts'
import { movedOn } from '@/core/session/press/moved-on.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { type Trial, trialShape } from '@/core/trial/trial-record.ts'
import { eventReferenceTroubles } from '@/core/whole-trial/event-reference-troubles.ts'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { refuseReferences } from './change-trial.ts'
import { checked, closed } from './checked.ts'
import { lockBeside, refuseBrokenSeal } from './keep-seal.ts'
import { nextCounts } from './next-counts.ts'
import { MovedOnFailure, NotebookFailure } from './notebook-failure.ts'
import { itemsNow, standsAsHeld, withItems } from './renewed-trial.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'
import { namedKitchen } from './stored-trial.ts'

/**
 * Appends events of one trial to its log, all or none, in the order given. Each gets an id, this device, its next running
 * number, the time (its own `at` when it has one) and the zone. What the log contradicts, or has moved on from since what the
 * person had `seen`, is refused, and so is what the seal forbids (src/core/seal/SPEC.md); with the first mix the lock is written
 * in front. A press at the bench must not wait for a long log: the new entries and what they name are checked; of what is
 * held, and was not changed elsewhere meanwhile, nothing is read again. The home list makes the trial's line anew when it is
 * next read.
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
  const alone = Dexie.currentTransaction === null
  const done = await store.transaction('rw', store.tables, async () => {
    const trial = await store.trials.get(trialId)
    if (!trial) throw new NotebookFailure('no-such-trial', trialId)
    const held = await heldNow(store, trial)
    await refuseMovedOn(store, trialId, held, events, seen)
    const entries = [...(await lockBeside(store, trialId, held, events)), ...events]
    const { device, first } = await nextCounts(store, entries.length)
    const at = now()
    const logged = entries.map((event, index) =>
      checked(eventShape, { at, ...event, id: newId(), device, count: first + index, zone }),
    )
    await refuseUnknown(store, trial, held, logged)
    await refuseBrokenSeal(store, trialId, entries)
    await store.events.bulkAdd(logged)
    const changed = checked(trialShape, { ...trial, revision: trial.revision + 1 })
    await store.trials.put(changed)
    // Its line in the home list is made anew when it is next read; until then there is none, which the keys tell.
    await store.summaries.delete(trialId)
    return {
      logged: logged.slice(-events.length),
      now: held && closed({ ...held, trial: changed, events: withItems(held.events, logged) }),
    }
  })
  // Only what is kept is held: what fails at the last moment, here or in a transaction around this one, leaves it as it was.
  if (alone && done.now && store.held?.trial.id === trialId) store.held = done.now
  return done.logged
}

/** What is held of a trial, as long as it stands so; undefined where it must be read. */
async function heldNow(store: Store, trial: Trial): Promise<WholeTrial | undefined> {
  const { held } = store
  return held && (await standsAsHeld(store, trial, held)) ? held : undefined
}

/** Refuses a press that the log of its session contradicts or has moved on from; only what is not held of the log is read. */
async function refuseMovedOn(
  store: Store,
  trialId: string,
  held: WholeTrial | undefined,
  press: readonly NewEvent[],
  seen: ReadonlySet<string> | undefined,
): Promise<void> {
  const known = store.held?.trial.id === trialId ? store.held.events : []
  const log = held?.events ?? (await itemsNow(store.events, trialId, known))
  const found = movedOn(log, press, seen)
  if (found) throw new MovedOnFailure(found)
}

/** Refuses entries that name something their trial does not have; of its log only the entries they cite are read. */
async function refuseUnknown(
  store: Store,
  trial: Trial,
  held: WholeTrial | undefined,
  logged: readonly Event[],
): Promise<void> {
  const trialId = trial.id
  const cited = await store.events.bulkGet(logged.flatMap(({ corrects }) => corrects ?? []))
  const known = cited.flatMap((event) => (event?.trialId === trialId ? [event.id] : []))
  const rest = await besideLog(store, trial, held, logged)
  refuseReferences(eventReferenceTroubles(rest, logged, known))
}

/** What entries may name besides the log, with the kitchen's things that the new ones bring in. */
async function besideLog(
  store: Store,
  trial: Trial,
  held: WholeTrial | undefined,
  logged: readonly Event[],
): Promise<Omit<WholeTrial, 'events' | 'ballots'>> {
  const { plans, sessions, photos } = held ?? (await readBesideLog(store, trial.id))
  const kitchen = await namedKitchen(store, { plans, sessions, events: [...logged], ballots: [] })
  if (held) return { trial, plans, sessions, photos, kitchen }
  const { events, ballots, ...rest } = checked(
    wholeTrialShape,
    { trial, plans, sessions, photos, kitchen, events: [], ballots: [] },
    'damaged',
  )
  return rest
}

async function readBesideLog(store: Store, trialId: string) {
  const [plans, sessions, photos] = await Promise.all([
    store.plans.where({ trialId }).toArray(),
    store.sessions.where({ trialId }).toArray(),
    store.photos.where({ trialId }).toArray(),
  ])
  return { plans, sessions, photos }
}
