import { strToU8, type Zippable, zip } from 'fflate'
import { dataVersion } from '@/trial-file/data-version.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { pictureEndings } from './backup-record.ts'
import { storedSettings } from './next-counts.ts'
import type { Store } from './store.ts'
import { storedTrial } from './stored-trial.ts'

const asFile = (content: unknown) => strToU8(`${JSON.stringify(content, null, 2)}\n`)

const zipped = (files: Zippable, mtime: number) =>
  new Promise<Uint8Array<ArrayBuffer>>((resolve, reject) =>
    zip(files, { mtime }, (error, data) => (error ? reject(error) : resolve(new Uint8Array(data)))),
  )

/** The whole notebook as one zip: every trial as its trial file, the kitchen, the settings without the device, the pictures. */
export async function backUp(store: Store, at: number): Promise<Blob> {
  const kept = await store.transaction('r', store.tables, async () => {
    const trialIds = await store.trials.toCollection().primaryKeys()
    const trials = await Promise.all(trialIds.map((id) => storedTrial(store, id)))
    const kitchen = await store.kitchen.toArray()
    const pictures = await store.pictures.toArray()
    return { trials, kitchen, pictures, settings: await storedSettings(store) }
  })
  const { appearance, temperatureUnit, cautionsSeen } = kept.settings
  const files: Zippable = {
    'backup.json': asFile({ format: 'evenhand-backup', version: dataVersion }),
    'kitchen.json': asFile(kept.kitchen),
    'settings.json': asFile({ appearance, temperatureUnit, cautionsSeen }),
  }
  const mediaTypes = new Map<string, keyof typeof pictureEndings>()
  for (const whole of kept.trials) {
    if (!whole) continue
    files[`trials/${whole.trial.id}.json`] = strToU8(writeTrialFile(whole))
    for (const photo of whole.photos) mediaTypes.set(photo.id, photo.mediaType)
  }
  for (const { id, blob } of kept.pictures) {
    const mediaType = mediaTypes.get(id)
    if (mediaType === undefined) continue
    const bytes = new Uint8Array(await blob.arrayBuffer())
    files[`pictures/${id}.${pictureEndings[mediaType]}`] = [bytes, { level: 0 }]
  }
  return new Blob([await zipped(files, at)], { type: 'application/zip' })
}
