import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { compareTrials } from '@/core/whole-trial/compare-trials.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { sameTrial } from '@/trial-file/canonical-trial.ts'
import { copyWithNewIds } from '@/trial-file/copy-with-new-ids.ts'
import { keepAhead } from './next-counts.ts'
import type { ImportOutcome } from './notebook.ts'
import type { Store } from './store.ts'
import { storedTrial } from './stored-trial.ts'
import { summaryOf } from './summary-of.ts'

type Parts = Pick<Store, 'plans' | 'sessions' | 'events' | 'ballots' | 'photos'>

/** Whether any record of a trial has an id under which the notebook holds another. */
async function idsTaken(store: Parts, whole: WholeTrial): Promise<boolean> {
  const held = await Promise.all([
    store.plans.bulkGet(whole.plans.map((each) => each.id)),
    store.sessions.bulkGet(whole.sessions.map((each) => each.id)),
    store.events.bulkGet(whole.events.map((each) => each.id)),
    store.ballots.bulkGet(whole.ballots.map((each) => each.id)),
    store.photos.bulkGet(whole.photos.map((each) => each.id)),
  ])
  return held.some((records) => records.some((record) => record !== undefined))
}

/** The ids of the things that the notebook does not hold as a thing of another kind. */
function keptIds(things: readonly KitchenThing[], held: readonly (KitchenThing | undefined)[]) {
  return things
    .filter((thing, index) => (held[index]?.kind ?? thing.kind) === thing.kind)
    .map((thing) => thing.id)
}

async function addWhole(store: Store, whole: WholeTrial): Promise<void> {
  const here = new Set(await store.kitchen.toCollection().primaryKeys())
  await store.kitchen.bulkAdd(whole.kitchen.filter((thing) => !here.has(thing.id)))
  await store.plans.bulkAdd(whole.plans)
  await store.sessions.bulkAdd(whole.sessions)
  await store.events.bulkAdd(whole.events)
  await store.ballots.bulkAdd(whole.ballots)
  await store.photos.bulkAdd(whole.photos)
  await store.trials.add(whole.trial)
  await store.summaries.put(summaryOf(whole))
  await keepAhead(store, [...whole.events, ...whole.ballots])
}

/** Whether another copy of a trial would show what its seal covers here: levels, weights, a question that names one. */
export const uncovers = (here: WholeTrial, copy: WholeTrial): boolean =>
  sealed(here) && !sealed(copy)

/** How the trial lies here that another copy of it meets. */
const placeOf = (here: WholeTrial, copy: WholeTrial) => ({
  uncovers: uncovers(here, copy),
  binned: here.trial.binnedAt !== undefined,
})

/**
 * Takes a checked trial in, within a transaction. The same trial again changes nothing; an id that stands for something else
 * here refuses it, or, with `keepBoth`, lets it in as a copy under new ids. A kitchen thing that is already here stays as
 * the notebook has it: the kitchen is the baker's own, and an erased taster stays erased. With `onlySay` nothing is written.
 */
export async function takeIn(
  store: Store,
  newId: () => string,
  whole: WholeTrial,
  keepBoth: boolean,
  onlySay = false,
): Promise<ImportOutcome> {
  const trialId = whole.trial.id
  const here = await storedTrial(store, trialId)
  if (here && sameTrial(here, whole)) return { ok: true, trialId, already: true }
  const held = await store.kitchen.bulkGet(whole.kitchen.map((thing) => thing.id))
  const keep = keptIds(whole.kitchen, held)
  const clash =
    here !== undefined || keep.length < whole.kitchen.length || (await idsTaken(store, whole))
  if (clash && !keepBoth) {
    const stands = here && { compared: compareTrials(here, whole), ...placeOf(here, whole) }
    return { ok: false, reason: 'same-id-different-content', trialId, ...stands }
  }
  const incoming = clash ? copyWithNewIds(whole, newId, new Set(keep)) : whole
  if (!onlySay) await addWhole(store, incoming)
  return { ok: true, trialId: incoming.trial.id, already: false }
}
