import type { Table } from 'dexie'
import type { Event } from '@/core/session/event-record.ts'
import type { Trial } from '@/core/trial/trial-record.ts'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { checked, closed } from './checked.ts'
import type { Store } from './store.ts'
import { namedKitchen, storedTrial } from './stored-trial.ts'

/**
 * A trial as it stands now, from what was read of it before: whatever says the same is the very object that was held, and
 * only the rest is read and checked. Where nothing was written since, only the kitchen's things are looked at. Else most records are never changed once they are written, so their ids tell; the trial
 * itself, the plan that is or was in force, a session with a dough made again or unsealed, and the kitchen's things are looked at anew. With nothing held of this trial it is read whole.
 */
export async function renewedTrial(
  store: Store,
  trialId: string,
  before: WholeTrial | undefined,
): Promise<WholeTrial | undefined> {
  const trial = await store.trials.get(trialId)
  if (!trial) return undefined
  // Asked only now: a press may have been held meanwhile, whose change this reading follows.
  const held = store.held?.trial.id === trialId ? store.held : before
  if (held?.trial.id !== trialId) return await storedTrial(store, trialId)
  if (await standsAsHeld(store, trial, held)) return await withKitchenNow(store, held)
  const inForce = new Set([trial.planId, held.trial.planId])
  const list = <Item extends { id: string }>(table: Table<Item, string>, before: readonly Item[]) =>
    itemsNow(table, trialId, before, inForce)
  const events = await list(store.events, held.events)
  // A session is changed by a dough made again, or at the unsealing: by turned plates, or as a helper's copy is completed.
  const remade = new Set(
    events.flatMap((event) =>
      event.sessionId !== null && (event.kind === 'made-again' || turns(event))
        ? [event.sessionId]
        : [],
    ),
  )
  const [plans, sessions, ballots, photos] = await Promise.all([
    list(store.plans, held.plans),
    itemsNow(store.sessions, trialId, held.sessions, remade),
    list(store.ballots, held.ballots),
    list(store.photos, held.photos),
  ])
  const belonging = { plans, sessions, events, ballots }
  const kitchen = (await namedKitchen(store, belonging)).map(orHeld(held.kitchen))
  return proved(held, {
    trial: orHeld([held.trial])(trial),
    ...belonging,
    photos,
    kitchen,
  })
}

const turns = (event: Event) => event.kind === 'unsealed'

/**
 * Whether nothing of a trial was written since it was held: every change of a trial raises its revision, and the number of
 * its entries tells one that was erased and brought back meanwhile.
 */
export async function standsAsHeld(store: Store, trial: Trial, held: WholeTrial): Promise<boolean> {
  if (JSON.stringify(trial) !== JSON.stringify(held.trial)) return false
  return (await store.events.where({ trialId: trial.id }).count()) === held.events.length
}

/** What is held with the kitchen's things as they are now, which change without the trial. */
async function withKitchenNow(store: Store, held: WholeTrial): Promise<WholeTrial> {
  const kitchen = (await namedKitchen(store, held)).map(orHeld(held.kitchen))
  const same =
    kitchen.length === held.kitchen.length &&
    kitchen.every((thing, at) => thing === held.kitchen[at])
  return same ? held : proved(held, { ...held, kitchen })
}

/** A list that stands in the order of ids with new records put in their places. */
export function withItems<Item extends { id: string }>(
  held: readonly Item[],
  fresh: readonly Item[],
): Item[] {
  const items = [...held]
  for (const item of fresh) {
    let from = 0
    let to = items.length
    while (from < to) {
      const middle = (from + to) >> 1
      if ((items[middle] as Item).id < item.id) from = middle + 1
      else to = middle
    }
    items.splice(from, 0, item)
  }
  return items
}

/** The records of one list in its order: those held, and from the store what is new or may have changed in place. */
export async function itemsNow<Item extends { id: string }>(
  table: Table<Item, string>,
  trialId: string,
  held: readonly Item[],
  mayChange: ReadonlySet<string> = new Set(),
): Promise<Item[]> {
  const ids = await table.where({ trialId }).primaryKeys()
  const known = new Map(held.map((item) => [item.id, item]))
  const read = await table.bulkGet(ids.filter((id) => mayChange.has(id) || !known.has(id)))
  const found = new Map(read.flatMap((item) => (item ? [[item.id, item] as const] : [])))
  const same = orHeld(held)
  return ids.flatMap((id) => {
    const item = found.get(id)
    return item ? same(item) : (known.get(id) ?? [])
  })
}

/** The held record instead of one that says the same. */
function orHeld<Item extends { id: string }>(held: readonly Item[]): (item: Item) => Item {
  return (item) => {
    const before = held.find(({ id }) => id === item.id)
    return before && JSON.stringify(before) === JSON.stringify(item) ? before : item
  }
}

/** What was found with its new records checked; a list in which nothing is new is the one that was held, and so the whole. */
function proved(held: WholeTrial, found: WholeTrial): WholeTrial {
  const fresh = checked(
    wholeTrialShape,
    {
      trial: found.trial,
      plans: freshOf(held.plans, found.plans),
      sessions: freshOf(held.sessions, found.sessions),
      events: freshOf(held.events, found.events),
      ballots: freshOf(held.ballots, found.ballots),
      photos: freshOf(held.photos, found.photos),
      kitchen: freshOf(held.kitchen, found.kitchen),
    },
    'damaged',
  )
  const now: WholeTrial = {
    trial: found.trial === held.trial ? held.trial : fresh.trial,
    plans: listNow(held.plans, found.plans, fresh.plans),
    sessions: listNow(held.sessions, found.sessions, fresh.sessions),
    events: listNow(held.events, found.events, fresh.events),
    ballots: listNow(held.ballots, found.ballots, fresh.ballots),
    photos: listNow(held.photos, found.photos, fresh.photos),
    kitchen: listNow(held.kitchen, found.kitchen, fresh.kitchen),
  }
  const parts = Object.keys(now) as (keyof WholeTrial)[]
  return parts.every((part) => now[part] === held[part]) ? held : closed(now)
}

function freshOf<Item>(held: readonly Item[], found: readonly Item[]): Item[] {
  const known = new Set(held)
  return found.filter((item) => !known.has(item))
}

function listNow<Item extends { id: string }>(
  held: Item[],
  found: readonly Item[],
  fresh: readonly Item[],
): Item[] {
  const checkedOf = new Map(fresh.map((item) => [item.id, item]))
  const now = found.map((item) => checkedOf.get(item.id) ?? item)
  const same = now.length === held.length && now.every((item, at) => item === held[at])
  return same ? held : now
}
