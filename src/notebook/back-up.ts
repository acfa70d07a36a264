import { strToU8 } from 'fflate'
import { sealed } from '@/core/seal/sealed.ts'
import { pictureFile } from '@/core/session/photo-record.ts'
import { dataVersion } from '@/trial-file/data-version.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { type HeldInBackup, markOf } from './held-in-backup.ts'
import type { LongWork } from './long-work.ts'
import { storedSettings } from './next-counts.ts'
import { isDamaged } from './notebook-failure.ts'
import { closeOpen } from './open-plan.ts'
import type { Store } from './store.ts'
import { storedTrial } from './stored-trial.ts'
import { zipWriter } from './zip-writer.ts'

/** A finished backup: the zip, how many trials are in it, how many of these are sealed, which could not be read, and what it holds. */
export interface BackedUp {
  zip: Blob
  trials: number
  sealed: number
  damaged: string[]
  held: HeldInBackup
}

const asFile = (content: unknown) => strToU8(`${JSON.stringify(content, null, 2)}\n`)

/**
 * The whole notebook as one zip: every trial as its trial file, the kitchen, the settings without the device, the pictures.
 * Each trial is read for itself and whole, so that a long backup holds up no press; the kitchen is read last and so holds
 * whatever the trials name. A trial that is damaged is left out and told, so that it does not keep the others from being
 * backed up. Undefined when it was stopped.
 */
export async function backUp(
  store: Store,
  at: number,
  { onProgress, stopped }: LongWork = {},
): Promise<BackedUp | undefined> {
  const zip = zipWriter(at)
  zip.add('backup.json', asFile({ format: 'evenhand-backup', version: dataVersion }))
  const damaged: string[] = []
  const revisions: HeldInBackup['trials'] = {}
  let trials = 0
  let underSeal = 0
  const trialIds = await store.trials.toCollection().primaryKeys()
  for (const [done, trialId] of trialIds.entries()) {
    if (stopped?.()) return undefined
    onProgress?.(done, trialIds.length)
    await closeOpen(store, trialId)
    const { whole, pictures } = await wholeWithPictures(store, trialId)
    if (whole === 'damaged') damaged.push(trialId)
    if (!whole || whole === 'damaged') continue
    trials += 1
    revisions[trialId] = whole.trial.revision
    if (sealed(whole)) underSeal += 1
    zip.add(`trials/${trialId}.json`, strToU8(writeTrialFile(whole)))
    const mediaTypes = new Map(whole.photos.map((photo) => [photo.id, photo.mediaType]))
    for (const { id, blob } of pictures) {
      const mediaType = mediaTypes.get(id)
      if (mediaType === undefined) continue
      const bytes = new Uint8Array(await blob.arrayBuffer())
      zip.add(`pictures/${pictureFile({ id, mediaType })}`, bytes, true)
    }
  }
  const { appearance, temperatureUnit, figures, cautionsSeen } = await storedSettings(store)
  const [kitchen, houses] = [await store.kitchen.toArray(), await store.houses.toArray()]
  zip.add('kitchen.json', asFile(kitchen))
  zip.add('houses.json', asFile(houses))
  zip.add(
    'settings.json',
    asFile({ appearance, temperatureUnit, ...(figures ? { figures } : {}), cautionsSeen }),
  )
  onProgress?.(trialIds.length, trialIds.length)
  const held: HeldInBackup = {
    trials: revisions,
    houses: Object.fromEntries(houses.map((house) => [house.id, markOf(house)])),
    kitchen: markOf(kitchen),
  }
  return { zip: zip.end(), trials, sealed: underSeal, damaged, held }
}

/** A trial and its pictures of one moment; a trial whose records do not fit their shapes is told as damaged. */
async function wholeWithPictures(store: Store, trialId: string) {
  return await store.transaction('r', store.tables, async () => {
    const pictures = await store.pictures.where({ trialId }).toArray()
    try {
      return { whole: await storedTrial(store, trialId), pictures }
    } catch (failure) {
      if (!isDamaged(failure)) throw failure
      return { whole: 'damaged' as const, pictures }
    }
  })
}
