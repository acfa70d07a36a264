import { copyWithNewIds } from '@/trial-file/copy-with-new-ids.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { lastMoment, shiftStamps } from '@/trial-file/shift-stamps.ts'
import { importWhole } from './import-whole.ts'
import type { ImportOutcome } from './notebook.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

const sampleEndedMilliseconds = 3 * 60_000

/** A trial file into the notebook, id for id; refused whole with every trouble when it is not sound. */
export async function importTrial(
  store: Store,
  { newId }: NotebookServices,
  text: string,
  keepBoth: boolean,
): Promise<ImportOutcome> {
  const read = readTrialFile(text)
  if (!read.ok) return { ok: false, reason: 'trouble', troubles: read.troubles }
  return await importWhole(store, newId, read.whole, keepBoth)
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
  return await importWhole(store, newId, moved, true)
}
