import { strFromU8, type Unzipped, unzip } from 'fflate'
import * as z from 'zod/mini'
import { kitchenThingShape } from '@/core/kitchen/kitchen-record.ts'
import type { Content } from '@/trial-file/migration.ts'
import { presentChain } from '@/trial-file/present-chain.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { backedUpSettingsShape, backupShape, pictureEndings } from './backup-record.ts'
import { importWhole } from './import-whole.ts'
import { storedSettings } from './next-counts.ts'
import type { ImportOutcome, RestoreOutcome } from './notebook.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

const unzipped = (bytes: Uint8Array) =>
  new Promise<Unzipped | undefined>((resolve) =>
    unzip(bytes, (error, files) => resolve(error ? undefined : files)),
  )

/** A JSON file of the backup, or undefined when it is missing or no JSON. */
function jsonFile(files: Unzipped, name: string): unknown {
  const bytes = files[name]
  if (!bytes) return undefined
  try {
    return JSON.parse(strFromU8(bytes))
  } catch {
    return undefined
  }
}

/** Kitchen and settings of a backup, brought up to the present version and checked; undefined when they do not hold. */
function surroundings(files: Unzipped, version: number) {
  const steps = presentChain.migrations.slice(version - 1)
  const asList = z.array(z.looseObject({})).safeParse(jsonFile(files, 'kitchen.json'))
  const asRecord = z.looseObject({}).safeParse(jsonFile(files, 'settings.json'))
  if (!asList.success || !asRecord.success) return undefined
  const things = asList.data.map((thing: Content) =>
    steps.reduce((old, step) => step.kitchenThing(old), thing),
  )
  const kitchen = z.array(kitchenThingShape).safeParse(things)
  const settings = backedUpSettingsShape.safeParse(
    steps.reduce((old: Content, step) => step.settings(old), asRecord.data),
  )
  return kitchen.success && settings.success
    ? { kitchen: kitchen.data, settings: settings.data }
    : undefined
}

/** Puts back the pictures whose photo is here and that are not here themselves. */
async function restorePictures(store: Store, files: Unzipped): Promise<void> {
  await store.transaction('rw', [store.photos, store.pictures], async () => {
    for (const photo of await store.photos.toArray()) {
      const bytes = files[`pictures/${photo.id}.${pictureEndings[photo.mediaType]}`]
      if (!bytes) continue
      const here = await store.pictures.get(photo.id)
      if (here) continue
      const blob = new Blob([new Uint8Array(bytes)], { type: photo.mediaType })
      await store.pictures.put({ id: photo.id, trialId: photo.trialId, blob })
    }
  })
}

/**
 * A backup into the notebook. What is already here stays: things of the kitchen as they are, trials by the rule of import,
 * each for itself. Appearance and units are taken over; the device keeps its own name.
 */
export async function restore(
  store: Store,
  { newId }: NotebookServices,
  backup: Blob,
): Promise<RestoreOutcome> {
  const files = await unzipped(new Uint8Array(await backup.arrayBuffer()))
  const told = backupShape.safeParse(files && jsonFile(files, 'backup.json'))
  if (!files || !told.success) return { ok: false, reason: 'not-a-backup' }
  const { version: found } = told.data
  const known = presentChain.version
  if (found > known) return { ok: false, reason: 'newer-version', found, known }
  const around = surroundings(files, found)
  if (!around) return { ok: false, reason: 'not-a-backup' }
  await store.transaction('rw', [store.kitchen, store.settings], async () => {
    const here = new Set(await store.kitchen.toCollection().primaryKeys())
    await store.kitchen.bulkAdd(around.kitchen.filter((thing) => !here.has(thing.id)))
    await store.settings.put({ ...(await storedSettings(store)), ...around.settings })
  })
  const trials: ImportOutcome[] = []
  for (const [name, bytes] of Object.entries(files)) {
    if (!/^trials\/[^/]+\.json$/.test(name)) continue
    const read = readTrialFile(strFromU8(bytes))
    trials.push(
      read.ok
        ? await importWhole(store, newId, read.whole, false)
        : { ok: false, reason: 'trouble', troubles: read.troubles },
    )
  }
  await restorePictures(store, files)
  return { ok: true, trials }
}
