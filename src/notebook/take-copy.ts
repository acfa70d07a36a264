import { saysSame } from '@/core/record/says-same.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type WholeTrial, wholeTrialShape } from '@/core/whole-trial/whole-trial.ts'
import { changeTrial, refuseDangling } from './change-trial.ts'
import { checked } from './checked.ts'
import { NotebookFailure } from './notebook-failure.ts'
import { closeOpen, isOpen } from './open-plan.ts'
import type { Store } from './store.ts'
import { summaryOf } from './summary-of.ts'

/**
 * Takes in a trial as the baker's device tells it to a helper's. Each record of the copy stands here from then on as it is
 * there; nothing that is here alone is taken away. What this device wrote and has not handed over yet stays as it is, a plan that
 * it changed (since `planBase`, what was told or handed over last) too, and with it the session in which it made a dough again. A copy that says nothing new changes nothing.
 */
export async function takeCopy(
  store: Store,
  copy: WholeTrial,
  waiting: ReadonlySet<string>,
  planBase?: Plan,
): Promise<{ planWaits: string | null }> {
  const there = checked(wholeTrialShape, copy)
  refuseDangling(there)
  const { id } = there.trial
  return await store.transaction('rw', store.tables, async () => {
    await addKitchen(store, there)
    const trial = await store.trials.get(id)
    if (!trial) {
      await addNew(store, there)
      return { planWaits: null }
    }
    const planWaits = await waitingPlan(store, trial.planId, waiting, planBase)
    const standing = await store.events.where({ trialId: id }).toArray()
    const remade = new Set(
      standing.flatMap((event) =>
        event.kind === 'made-again' && waiting.has(event.id) ? [event.sessionId] : [],
      ),
    )
    const changes = {
      plans: await changed(
        store.plans,
        there.plans.filter((plan) => plan.id !== planWaits),
      ),
      sessions: await changed(
        store.sessions,
        there.sessions.filter((session) => !remade.has(session.id)),
      ),
      events: await changed(
        store.events,
        there.events.filter((event) => !waiting.has(event.id)),
      ),
      ballots: await changed(store.ballots, there.ballots),
      photos: await changed(store.photos, there.photos),
    }
    const moved = !planWaits && trial.planId !== there.trial.planId
    if (!planWaits && (moved || changes.plans.length > 0)) await closeOpen(store, id)
    if (!moved && Object.values(changes).every((records) => records.length === 0))
      return { planWaits }
    await refuseOthers(store, id, changes)
    return await changeTrial(store, id, async (here) => {
      await store.plans.bulkPut(changes.plans)
      await store.sessions.bulkPut(changes.sessions)
      await store.events.bulkPut(changes.events)
      await store.ballots.bulkPut(changes.ballots)
      await store.photos.bulkPut(changes.photos)
      return {
        now: {
          trial: planWaits ? here.trial : { ...here.trial, planId: there.trial.planId },
          plans: withThose(here.plans, changes.plans),
          sessions: withThose(here.sessions, changes.sessions),
          events: withThose(here.events, changes.events),
          ballots: withThose(here.ballots, changes.ballots),
          photos: withThose(here.photos, changes.photos),
        },
        told: { planWaits },
      }
    })
  })
}

/** The plan in force, by its id, where this device changed it and the other has not heard of that; else null. */
async function waitingPlan(
  store: Store,
  planId: string,
  waiting: ReadonlySet<string>,
  planBase: Plan | undefined,
): Promise<string | null> {
  if (waiting.has(planId)) return planId
  const head = planBase && (await store.plans.get(planId))
  const changed = head && !saysSame(head, planBase) && (await isOpen(store, head))
  return changed ? planId : null
}

type Record = { id: string }
interface Kept<Item> {
  bulkGet: (ids: string[]) => Promise<(Item | undefined)[]>
}

/** The records of a list that are not here, or say something else here. */
async function changed<Item extends Record>(table: Kept<Item>, items: readonly Item[]) {
  const here = await table.bulkGet(items.map(({ id }) => id))
  return items.filter((item, at) => !here[at] || !saysSame(here[at], item))
}

/** The list in the order of ids, those changed in the place of those that stood. */
function withThose<Item extends Record>(here: readonly Item[], those: readonly Item[]): Item[] {
  const all = new Map([...here, ...those].map((item) => [item.id, item]))
  return [...all.values()].toSorted((a, b) => (a.id < b.id ? -1 : 1))
}

async function addNew(store: Store, there: WholeTrial): Promise<void> {
  await refuseOthers(store, there.trial.id, there)
  await store.plans.bulkAdd(there.plans)
  await store.sessions.bulkAdd(there.sessions)
  await store.events.bulkAdd(there.events)
  await store.ballots.bulkAdd(there.ballots)
  await store.photos.bulkAdd(there.photos)
  await store.trials.add(there.trial)
  await store.summaries.put(summaryOf(there))
}

/** Refuses records whose ids stand for those of another trial here: they would take their place. */
async function refuseOthers(
  store: Store,
  trialId: string,
  those: Pick<WholeTrial, 'plans' | 'sessions' | 'events' | 'ballots' | 'photos'>,
): Promise<void> {
  const idsOf = (records: readonly Record[]) => records.map(({ id }) => id)
  const here = await Promise.all([
    store.plans.bulkGet(idsOf(those.plans)),
    store.sessions.bulkGet(idsOf(those.sessions)),
    store.events.bulkGet(idsOf(those.events)),
    store.ballots.bulkGet(idsOf(those.ballots)),
    store.photos.bulkGet(idsOf(those.photos)),
  ])
  const other = here.flat().find((record) => record && record.trialId !== trialId)
  if (other) throw new NotebookFailure('refused-record', `${other.id} is of another trial here`)
}

async function addKitchen(store: Store, { kitchen }: WholeTrial): Promise<void> {
  const here = new Set(await store.kitchen.toCollection().primaryKeys())
  await store.kitchen.bulkAdd(kitchen.filter((thing) => !here.has(thing.id)))
}
