import { type Event, eventShape } from '@/core/session/event-record.ts'
import { changeTrial } from './change-trial.ts'
import { checked } from './checked.ts'
import { nextCounts } from './next-counts.ts'
import type { NewEvent } from './notebook.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/**
 * Appends events of one trial to its log, all or none, in the order given. Each gets an id, this device, its next running
 * number, the time (its own `at` when it has one) and the zone.
 */
export async function logEvents(
  store: Store,
  { now, zone, newId }: NotebookServices,
  events: readonly NewEvent[],
): Promise<Event[]> {
  const [trialId, ...others] = new Set(events.map((event) => event.trialId))
  if (trialId === undefined) return []
  if (others.length > 0) throw new NotebookFailure('refused-record', 'events of several trials')
  return await changeTrial(store, trialId, async (whole) => {
    const { device, first } = await nextCounts(store, events.length)
    const at = now()
    const logged = events.map((event, index) =>
      checked(eventShape, { at, ...event, id: newId(), device, count: first + index, zone }),
    )
    await store.events.bulkAdd(logged)
    return { now: { events: [...whole.events, ...logged] }, told: logged }
  })
}
