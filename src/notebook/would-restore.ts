import { saysSame } from '@/core/record/says-same.ts'
import type { LongWork } from './long-work.ts'
import { storedSettings } from './next-counts.ts'
import type { WouldRestoreOutcome } from './notebook.ts'
import { openBackup, readSome, takeSome, togetherTrials } from './restore.ts'
import type { RestoreRecord } from './restore-record.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/**
 * What `restore` would do with this backup, by the same rules, read and not written: nothing of the notebook is changed. Undefined when it was stopped.
 */
export async function wouldRestore(
  store: Store,
  { newId, now }: NotebookServices,
  backup: Blob,
  { name = '', onProgress, stopped }: LongWork & { name?: string } = {},
): Promise<WouldRestoreOutcome | undefined> {
  const opened = openBackup(new Uint8Array(await backup.arrayBuffer()))
  if (!opened.ok) return opened
  const { zip, around, files } = opened
  let record: RestoreRecord = {
    ...{ file: name, at: now(), total: files.length, cameIn: 0, already: 0, left: [] },
    ...{ picturesLost: [], ended: null },
  }
  const comeIn: (string | null)[] = []
  for (let first = 0; first < files.length; first += togetherTrials) {
    if (stopped?.()) return undefined
    onProgress?.(first, files.length)
    const some = readSome(zip, files.slice(first, first + togetherTrials))
    const before = record
    record = await store.transaction(
      'r',
      store.tables,
      async () => await takeSome(store, newId, some, before, (question) => comeIn.push(question)),
    )
  }
  const [kitchen, houses, settings] = await Promise.all([
    store.kitchen.toCollection().primaryKeys(),
    store.houses.toCollection().primaryKeys(),
    storedSettings(store),
  ])
  const { appearance, temperatureUnit, figures } = around.settings
  return {
    ok: true,
    would: {
      ...{ file: name, total: files.length, comeIn, already: record.already, left: record.left },
      houses: missing(around.houses, houses),
      kitchenThings: missing(around.kitchen, kitchen),
      settings: {
        ...(appearance === settings.appearance ? {} : { appearance }),
        ...(temperatureUnit === settings.temperatureUnit ? {} : { temperatureUnit }),
        ...(figures && !saysSame(figures, settings.figures) ? { figures } : {}),
      },
    },
  }
}

const missing = (those: readonly { id: string }[], here: readonly string[]) =>
  those.filter(({ id }) => !here.includes(id)).length
