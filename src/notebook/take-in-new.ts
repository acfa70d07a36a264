import { mergeTrials } from '@/core/whole-trial/merge-trials.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { changeTrial } from './change-trial.ts'
import { keepAhead } from './next-counts.ts'
import type { TakenIn } from './notebook.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/**
 * Takes into a trial that stands here what only the file's copy of it has. Append-only records come in by their ids, the
 * plan in force is merged by field; what cannot be taken is named and stands as it stood here. Nothing here is lost.
 */
export async function takeInNew(
  store: Store,
  { newId, now, zone }: NotebookServices,
  text: string,
): Promise<TakenIn> {
  const read = readTrialFile(text)
  if (!read.ok) return { ok: false, reason: 'trouble', troubles: read.troubles }
  const there = read.whole
  return await changeTrial(store, there.trial.id, async (here) => {
    await addKitchen(store, there)
    const revision = [...here.plans, ...there.plans].reduce(
      (last, each) => Math.max(last, each.revision),
      0,
    )
    const merged = mergeTrials(here, there, (plan) => ({
      ...{ ...plan, id: newId(), revision: revision + 1, at: now(), zone },
    }))
    const { whole, taken, conflicts } = merged
    await refuseTaken(store, whole)
    await store.plans.bulkPut(whole.plans)
    await store.sessions.bulkPut(whole.sessions)
    await store.events.bulkPut(whole.events)
    await store.ballots.bulkPut(whole.ballots)
    await store.photos.bulkPut(whole.photos)
    await keepAhead(store, [...whole.events, ...whole.ballots])
    return { now: whole, told: { ok: true, trialId: here.trial.id, taken, conflicts } }
  })
}

/** Refuses records whose ids stand for those of another trial here: they would take their place. */
async function refuseTaken(store: Store, whole: WholeTrial): Promise<void> {
  const idsOf = (records: readonly { id: string }[]) => records.map(({ id }) => id)
  const held = await Promise.all([
    store.plans.bulkGet(idsOf(whole.plans)),
    store.sessions.bulkGet(idsOf(whole.sessions)),
    store.events.bulkGet(idsOf(whole.events)),
    store.ballots.bulkGet(idsOf(whole.ballots)),
    store.photos.bulkGet(idsOf(whole.photos)),
  ])
  const taken = held.flat().find((record) => record && record.trialId !== whole.trial.id)
  if (taken) throw new NotebookFailure('refused-record', `${taken.id} is of another trial here`)
}

/** The things the file's copy names and this kitchen lacks; what is here stays as it is. */
async function addKitchen(store: Store, { kitchen }: WholeTrial): Promise<void> {
  const here = new Set(await store.kitchen.toCollection().primaryKeys())
  await store.kitchen.bulkAdd(kitchen.filter((thing) => !here.has(thing.id)))
}
