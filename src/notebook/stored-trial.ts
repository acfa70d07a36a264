import Dexie from 'dexie'
import type * as z from 'zod/mini'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { most } from '@/core/record/most.ts'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { checked, closed } from './checked.ts'
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
  const found = await readTrial(store, trialId)
  return found && checked(wholeTrialShape, found, 'damaged')
}

/** The same as it was stored, not checked yet. */
export async function readTrial(store: Store, trialId: string): Promise<WholeTrial | undefined> {
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
  return { trial, ...belonging, photos, kitchen }
}

/** So long one turn of checking takes about: a frame has room for it beside its own work. */
const turnMilliseconds = 8
/** So many records are checked between two looks at the clock. */
const atOnce = 40

/** What was read, checked whole as `storedTrial` does; a long one a part at a time, so that no frame waits for it. */
export async function checkedInTurns(read: WholeTrial): Promise<WholeTrial> {
  const isShort = read.events.length + read.ballots.length <= atOnce
  const isTooLong = read.events.length > most.events || read.ballots.length > most.ballots
  if (isShort || isTooLong) return checked(wholeTrialShape, read, 'damaged')
  const events = await inTurns(wholeTrialShape.shape.events, read.events)
  const ballots = await inTurns(wholeTrialShape.shape.ballots, read.ballots)
  const rest = wholeTrialShape.safeParse({ ...read, events: [], ballots: [] })
  // What does not fit is told as it is of a whole trial, by its place in it.
  if (!events || !ballots || !rest.success) return checked(wholeTrialShape, read, 'damaged')
  return closed({ ...rest.data, events, ballots })
}

/** The records of a list in their shape's form, or null once one does not fit it. */
async function inTurns<Item>(
  list: z.ZodMiniType<Item[]>,
  records: readonly Item[],
): Promise<Item[] | null> {
  const fit: Item[] = []
  let begun = performance.now()
  for (let from = 0; from < records.length; from += atOnce) {
    const part = list.safeParse(records.slice(from, from + atOnce))
    if (!part.success) return null
    fit.push(...part.data)
    if (performance.now() - begun < turnMilliseconds) continue
    await Dexie.waitFor(new Promise((go) => setTimeout(go)))
    begun = performance.now()
  }
  return fit
}
