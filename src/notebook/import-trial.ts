import { looksBehindCodes } from '@/core/seal/looks-behind-codes.ts'
import { copyWithNewIds } from '@/trial-file/copy-with-new-ids.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { lastMoment, shiftStamps } from '@/trial-file/shift-stamps.ts'
import { logEvents } from './log-events.ts'
import type { ImportOutcome } from './notebook.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'
import { storedTrial } from './stored-trial.ts'
import { takeIn, uncovers } from './take-in.ts'

const sampleEndedMilliseconds = 3 * 60_000

/**
 * A trial file into the notebook, id for id; refused whole with every trouble when it is not sound. A copy that is kept beside a
 * trial under seal and would show what that covers is a look behind its codes, and is written into its log.
 */
export async function importTrial(
  store: Store,
  services: NotebookServices,
  text: string,
  keepBoth: boolean,
): Promise<ImportOutcome> {
  const read = readTrialFile(text)
  if (!read.ok) return { ok: false, reason: 'trouble', troubles: read.troubles }
  const { whole } = read
  // Dexie holds a transaction open across awaits only in a function that is itself async.
  return await store.transaction('rw', store.tables, async () => {
    const here = keepBoth ? await storedTrial(store, whole.trial.id) : undefined
    if (here && uncovers(here, whole))
      await logEvents(store, services, looksBehindCodes(here, 'kept an open copy of it beside it'))
    return await takeIn(store, services.newId, whole, keepBoth)
  })
}

/**
 * A sample into the notebook as a trial of its own, as if its last event had been three minutes ago. It can be opened again
 * and again; its kitchen things keep their ids, so that the kitchen does not fill with doubles.
 */
export async function openSample(
  store: Store,
  { now, newId }: NotebookServices,
  text: string,
): Promise<ImportOutcome> {
  const read = readTrialFile(text)
  if (!read.ok) return { ok: false, reason: 'trouble', troubles: read.troubles }
  const kept = new Set(read.whole.kitchen.map((thing) => thing.id))
  const copy = copyWithNewIds(read.whole, newId, kept)
  const moved = shiftStamps(copy, now() - sampleEndedMilliseconds - lastMoment(copy))
  return await store.transaction(
    'rw',
    store.tables,
    async () => await takeIn(store, newId, moved, true),
  )
}
