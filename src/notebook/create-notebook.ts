import { Dexie } from 'dexie'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { dataVersion } from '@/trial-file/data-version.ts'
import { asFailure } from './as-failure.ts'
import { bookChoices, bookPage, newestBegun, readySearch, shelfNow } from './book-page.ts'
import { changeSettings } from './change-settings.ts'
import { keepDraft } from './keep-draft.ts'
import { makeReady } from './make-ready.ts'
import { storedSettings } from './next-counts.ts'
import type { Notebook, OpenNotebook } from './notebook.ts'
import { NotebookFailure } from './notebook-failure.ts'
import { closeOpen } from './open-plan.ts'
import type { NotebookServices } from './services.ts'
import { type LateChain, Store } from './store.ts'
import { linkedSummaries, storedSummaries } from './stored-summaries.ts'

/** The steps there have been so far, fetched when an older notebook is met. */
export const presentSteps: LateChain = {
  version: dataVersion,
  load: async () => (await import('@/trial-file/present-chain.ts')).presentChain,
}

/** The same function, what the database throws told as a failure with its reason. */
const telling =
  (store: Store) =>
  <Given extends unknown[], Told>(method: (...given: Given) => Promise<Told>) =>
  async (...given: Given): Promise<Told> => {
    try {
      return await method(...given)
    } catch (error) {
      throw asFailure(error, store)
    }
  }

/** Why a notebook was lost while it was in use, and who wants to hear of it. */
function lostOf(store: Store): OpenNotebook['lost'] {
  let lost: FailureReason | null = null
  const listeners = new Set<() => void>()
  store.onLost = () => {
    lost = store.closedBecause
    for (const listener of listeners) listener()
  }
  return {
    reason: () => lost,
    subscribe: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
  }
}

/**
 * A notebook kept under a name in this browser. It opens by itself at the first use; opened twice (two tabs), both see and
 * keep the same. Reading and writing files is loaded when first asked for.
 */
export function createNotebook(
  name: string,
  services: NotebookServices,
  chain: LateChain = presentSteps,
): OpenNotebook {
  const { now } = services
  const store = new Store(name, chain)
  store.on('ready', () => makeReady(store, services.newId))
  const tell = telling(store)
  // What is written bears the moment it was asked for, however long the program and the disk take.
  const writing = async () => {
    const at = services.now()
    return (await import('./writing.ts')).writingOf(store, { ...services, now: () => at })
  }
  // Fetched ahead of the first press; one that still finds it missing says so itself.
  void writing().catch(() => undefined)
  // What reads a whole trial is not needed on the first page. Waited for in a way that a live query still sees what it watches.
  const whole = async (trialId: string) => {
    const { checkedInTurns, readTrial } = await Dexie.waitFor(import('./stored-trial.ts'))
    const read = await store.transaction('r', store.tables, () => readTrial(store, trialId))
    return read && (await checkedInTurns(read))
  }
  const renewed = async (trialId: string, held: WholeTrial | undefined) => {
    const { renewedTrial } = await Dexie.waitFor(import('./renewed-trial.ts'))
    const { checkedInTurns, readTrial } = await Dexie.waitFor(import('./stored-trial.ts'))
    const isHeld = [held, store.held].some((each) => each?.trial.id === trialId)
    const reading = isHeld
      ? () => renewedTrial(store, trialId, held)
      : () => readTrial(store, trialId)
    const read = await store.transaction('r', store.tables, reading)
    const found = isHeld || !read ? read : await checkedInTurns(read)
    store.held = found
    return found
  }

  const notebook: Notebook = {
    name,
    summaries: tell((options) => storedSummaries(store, options)),
    bookPage: tell((asked) => bookPage(store, asked)),
    bookChoices: tell(() => bookChoices(store)),
    readySearch: tell(() => readySearch(store)),
    shelfNow: tell((trialId) => shelfNow(store, trialId)),
    chains: tell(async () => {
      const lines = await linkedSummaries(store)
      return (await import('./chains.ts')).chainsOf(lines)
    }),
    newestBegun: tell((most) => newestBegun(store, most)),
    wholeTrial: tell((trialId, held) =>
      held === undefined ? whole(trialId) : renewed(trialId, held ?? undefined),
    ),
    createTrial: tell(async (...given) => await (await writing()).createTrial(...given)),
    keepPlan: tell(async (...given) => await (await writing()).keepPlan(...given)),
    beginSession: tell(async (...given) => await (await writing()).beginSession(...given)),
    makeAgain: tell(async (...given) => await (await writing()).makeAgain(...given)),
    turnOver: tell(async (...given) => await (await writing()).turnOver(...given)),
    log: tell(async (event) => {
      const [logged] = await (await writing()).logAll([event])
      if (!logged) throw new Error('one event was logged')
      return logged
    }),
    logAll: tell(async (...given) => await (await writing()).logAll(...given)),
    sealBallot: tell(async (...given) => await (await writing()).sealBallot(...given)),
    keepAnswer: tell(async (...given) => await (await writing()).keepAnswer(...given)),
    archive: tell(async (...given) => await (await writing()).archive(...given)),
    bin: tell(async (...given) => await (await writing()).bin(...given)),
    erase: tell(async (...given) => await (await writing()).erase(...given)),

    kitchen: tell(async () => await store.kitchen.toArray()),
    keepKitchenThing: tell(async (...given) => await (await writing()).keepKitchenThing(...given)),
    removeKitchenThing: tell(
      async (...given) => await (await writing()).removeKitchenThing(...given),
    ),
    eraseTaster: tell(async (...given) => await (await writing()).eraseTaster(...given)),

    draft: tell(async (key) => (await store.drafts.get(key))?.values),
    keepDraft: tell((key, values) => keepDraft(store, key, values)),
    dropDraft: tell(async (key) => await store.drafts.delete(key)),

    // What a house formula is need not be known on the first page. Read first, so that a live query sees what it watches.
    houses: tell(async () => {
      const kept = await store.houses.toArray()
      return (await import('./keep-house.ts')).housesOf(kept)
    }),
    house: tell(async (id) => {
      const kept = await store.houses.get(id)
      return (await import('./keep-house.ts')).houseOf(kept)
    }),
    keepHouse: tell(async (house) => {
      const { keepHouse } = await import('./keep-house.ts')
      await keepHouse(store, house)
    }),
    binHouse: tell(async (id, binned) => {
      const { binHouse } = await import('./keep-house.ts')
      await binHouse(store, id, binned ? now() : undefined)
    }),

    settings: tell(() => storedSettings(store)),
    keepSettings: tell((change) => changeSettings(store, change)),

    addPhoto: tell(async (...given) => await (await writing()).addPhoto(...given)),
    picture: tell(async (photoId) => (await store.pictures.get(photoId))?.blob),

    exportTrial: tell(async (trialId) => {
      const { exportTrial } = await import('./export-trial.ts')
      await closeOpen(store, trialId)
      const found = await whole(trialId)
      if (!found) throw new NotebookFailure('no-such-trial', trialId)
      return exportTrial(found)
    }),
    importTrial: tell(async (text, { keepBoth = false } = {}) => {
      const { importTrial } = await import('./import-trial.ts')
      return await importTrial(store, services, text, keepBoth)
    }),
    openSample: tell(async (text) => {
      const { openSample } = await import('./import-trial.ts')
      return await openSample(store, services, text)
    }),
    takeInNew: tell(async (text) => {
      const { takeInNew } = await import('./take-in-new.ts')
      return await takeInNew(store, services, text)
    }),
    takeEntry: tell(async (...given) => {
      const { takeEntry } = await import('./take-entry.ts')
      return await takeEntry(store, ...given)
    }),
    takeCopy: tell(async (...given) => {
      const { takeCopy } = await import('./take-copy.ts')
      return await takeCopy(store, ...given)
    }),
    takePlan: tell(async (...given) => {
      const { takePlan } = await import('./take-plan.ts')
      return await takePlan(store, services, ...given)
    }),
    planMadeHere: tell(async (trialId) => {
      const { planMadeHere } = await Dexie.waitFor(import('./take-plan.ts'))
      return await planMadeHere(store, trialId)
    }),
    backUp: tell(async (work) => {
      const { backUp } = await import('./back-up.ts')
      return await backUp(store, now(), work)
    }),
    restore: tell(async (zip, work) => {
      const { restore } = await import('./restore.ts')
      return await restore(store, services, zip, work)
    }),
    wouldRestore: tell(async (zip, work) => {
      const { wouldRestore } = await import('./would-restore.ts')
      return await wouldRestore(store, services, zip, work)
    }),
    backupState: tell(async () => {
      const { backupState } = await Dexie.waitFor(import('./backup-state.ts'))
      return await backupState(store)
    }),
    keepBackedUp: tell(async (at, held) => {
      const { keepBackedUp } = await import('./backup-state.ts')
      await keepBackedUp(store, at, held)
    }),
    restoreRecord: tell(async () => {
      const { storedRestoreRecord } = await import('./restore-record.ts')
      return await storedRestoreRecord(store)
    }),
    dropRestoreRecord: tell(async () => {
      const { dropRestoreRecord } = await import('./restore-record.ts')
      await dropRestoreRecord(store)
    }),
  }
  return { ...notebook, close: () => store.leave(), lost: lostOf(store) }
}
