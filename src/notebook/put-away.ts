import { changeTrial } from './change-trial.ts'
import type { Store } from './store.ts'

/**
 * Puts a trial away or gets it back: `archivedAt` and `binnedAt` say since when; a trial already there keeps its moment, and
 * its answer in the home list stays.
 */
export async function putAway(
  store: Store,
  trialId: string,
  where: 'archivedAt' | 'binnedAt',
  at: number | undefined,
): Promise<void> {
  await changeTrial(store, trialId, async ({ trial }) => {
    const { [where]: since, ...rest } = trial
    return {
      now: { trial: at === undefined ? rest : { ...rest, [where]: since ?? at } },
      told: undefined,
      answerStands: true,
    }
  })
}

/**
 * Deletes a trial with everything that belongs to it, drafts and pictures too, for good. The kitchen stays. One that does not lie
 * in the bin, as when it was taken back in another window meanwhile, is not erased, and false is answered.
 */
export async function eraseTrial(store: Store, trialId: string): Promise<boolean> {
  store.held = undefined
  return await store.transaction('rw', store.tables, async () => {
    const trial = await store.trials.get(trialId)
    if (trial && trial.binnedAt === undefined) return false
    const belonging = [
      store.plans,
      store.sessions,
      store.events,
      store.ballots,
      store.photos,
      store.pictures,
    ]
    const sessionIds = await store.sessions.where({ trialId }).primaryKeys()
    const own = new Set([trialId, ...sessionIds])
    for (const table of belonging) await table.where({ trialId }).delete()
    await store.drafts
      .filter((draft) => draft.key.split('/').some((part) => own.has(part)))
      .delete()
    await store.summaries.delete(trialId)
    await store.trials.delete(trialId)
    return true
  })
}
