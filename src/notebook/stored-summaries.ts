import type { Store } from './store.ts'
import { storedTrial } from './stored-trial.ts'
import { summaryOf } from './summary-of.ts'
import { type Summary, summaryShape } from './summary-record.ts'

/** The summary of each trial; one that is missing or not of the trial's revision is made anew, and said to be fresh. */
async function upToDate(store: Store): Promise<{ summary: Summary; fresh: boolean }[]> {
  const trials = await store.trials.toArray()
  // In one piece: thousands of lines one by one take the database many times as long.
  const kept = new Map((await store.summaries.toArray()).map((line) => [line.trialId, line]))
  const lines = trials.map(async (trial) => {
    const read = summaryShape.safeParse(kept.get(trial.id))
    if (read.success && read.data.revision === trial.revision)
      return { summary: read.data, fresh: false }
    const whole = await storedTrial(store, trial.id)
    return whole ? { summary: summaryOf(whole), fresh: true } : undefined
  })
  return (await Promise.all(lines)).filter((line) => line !== undefined)
}

/** The home list, newest work first. Only reads, so that a live query may use it. */
export async function storedSummaries(
  store: Store,
  { binned = false, archived = false }: { binned?: boolean; archived?: boolean } = {},
): Promise<Summary[]> {
  const lines = await store.transaction('r', store.tables, () => upToDate(store))
  return lines
    .map((line) => line.summary)
    .filter((line) => (binned || !line.binned) && (archived || !line.archived))
    .sort((a, b) => b.lastAt - a.lastAt || (a.trialId < b.trialId ? -1 : 1))
}

/** Stores anew the summaries that are missing or out of date, and drops those whose trial is gone. */
export async function renewSummaries(store: Store): Promise<void> {
  await store.transaction('rw', store.tables, async () => {
    const lines = await upToDate(store)
    const known = new Set(lines.map((line) => line.summary.trialId))
    const kept = await store.summaries.toCollection().primaryKeys()
    await store.summaries.bulkDelete(kept.filter((trialId) => !known.has(trialId)))
    await store.summaries.bulkPut(lines.filter((line) => line.fresh).map((line) => line.summary))
  })
}
