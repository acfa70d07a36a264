import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { checked } from './checked.ts'
import { kitchenIdsOf } from './kitchen-of-trial.ts'
import type { Store } from './store.ts'

/** The kitchen things a trial names, as they are now, rising by id; what is not there is left out. */
export async function namedKitchen(
  store: Store,
  trial: Parameters<typeof kitchenIdsOf>[0],
): Promise<KitchenThing[]> {
  const things = await store.kitchen.bulkGet(
    [...kitchenIdsOf(trial)].sort((a, b) => (a < b ? -1 : 1)),
  )
  return things.filter((thing) => thing !== undefined)
}

/**
 * A trial with everything that belongs to it, in canonical order, checked whole; undefined when there is none. Reads
 * within the transaction it is called in.
 */
export async function storedTrial(store: Store, trialId: string): Promise<WholeTrial | undefined> {
  const trial = await store.trials.get(trialId)
  if (!trial) return undefined
  const [plans, sessions, events, ballots, photos] = await Promise.all([
    store.plans.where({ trialId }).toArray(),
    store.sessions.where({ trialId }).toArray(),
    store.events.where({ trialId }).toArray(),
    store.ballots.where({ trialId }).toArray(),
    store.photos.where({ trialId }).toArray(),
  ])
  const belonging = { plans, sessions, events, ballots }
  const kitchen = await namedKitchen(store, belonging)
  return checked(wholeTrialShape, { trial, ...belonging, photos, kitchen }, 'damaged')
}
