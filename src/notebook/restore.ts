import { strFromU8 } from 'fflate'
import { sealed } from '@/core/seal/sealed.ts'
import { pictureFile } from '@/core/session/photo-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { presentChain } from '@/trial-file/present-chain.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { asFailure } from './as-failure.ts'
import { backupSurroundings, backupVersion } from './backup-surroundings.ts'
import type { LongWork } from './long-work.ts'
import { storedSettings } from './next-counts.ts'
import type { RestoreOutcome } from './notebook.ts'
import { isDamaged, NotebookFailure } from './notebook-failure.ts'
import { keepRestoreRecord, type LeftOut, type RestoreRecord } from './restore-record.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'
import { takeIn } from './take-in.ts'
import { type ZipReader, zipReader } from './zip-reader.ts'

/** So many trials come in at a time: enough that lists are not made anew for each, few enough that a press gets its turn. */
export const togetherTrials = 40

/**
 * A backup into the notebook, some trials at a time, each whole. What is already here stays: things of the kitchen as they
 * are, trials by the rule of import, each for itself. Appearance and units are taken over; the device keeps its own name.
 * The record of what came in is kept with the trials: a restore that was stopped, ran out of room or lost its window tells
 * how far it was, and the same backup read again brings the rest.
 */
export async function restore(
  store: Store,
  { newId, now }: NotebookServices,
  backup: Blob,
  { name = '', onProgress, stopped }: LongWork & { name?: string } = {},
): Promise<RestoreOutcome> {
  const opened = openBackup(new Uint8Array(await backup.arrayBuffer()))
  if (!opened.ok) return opened
  const { zip, around, files } = opened
  let record: RestoreRecord = {
    ...{ file: name, at: now(), total: files.length, cameIn: 0, already: 0, left: [] },
    ...{ picturesLost: [], ended: null },
  }
  const end = async (ended: RestoreRecord['ended']): Promise<RestoreOutcome> => {
    record = { ...record, ended }
    await keepRestoreRecord(store, record)
    return { ok: true, record }
  }
  try {
    await takeSurroundings(store, around, record)
    for (let first = 0; first < files.length; first += togetherTrials) {
      if (stopped?.()) return await end('stopped')
      onProgress?.(first, files.length)
      const some = readSome(zip, files.slice(first, first + togetherTrials))
      const before = record
      record = await store.transaction('rw', store.tables, async () => {
        const after = await takeSome(store, newId, some, before)
        await keepRestoreRecord(store, after)
        return after
      })
      const picturesLost = await restorePictures(store, zip, some)
      record = { ...record, picturesLost: [...record.picturesLost, ...picturesLost] }
    }
    return await end('whole')
  } catch (error) {
    const failure = asFailure(error, store)
    if (!(failure instanceof NotebookFailure)) throw failure
    const ended = failure.reason === 'out-of-room' ? 'out-of-room' : 'failed'
    // Where not even the record of it can be kept, whoever asked still hears how far it was.
    return await end(ended).catch(() => ({ ok: true as const, record: { ...record, ended } }))
  }
}

type OpenedBackup =
  | Exclude<RestoreOutcome, { ok: true }>
  | {
      ok: true
      zip: ZipReader
      around: NonNullable<ReturnType<typeof backupSurroundings>>
      /** The trial files in it, by name. */
      files: string[]
    }

/** A backup as it lies in its zip, its kitchen, house formulas and settings checked; or why it is none that can be read. */
export function openBackup(bytes: Uint8Array): OpenedBackup {
  const zip = zipReader(bytes)
  const found = zip && backupVersion(zip)
  if (!zip || found === undefined) return { ok: false, reason: 'not-a-backup' }
  const known = presentChain.version
  if (found > known) return { ok: false, reason: 'newer-version', found, known }
  const around = backupSurroundings(zip, found)
  if (!around) return { ok: false, reason: 'not-a-backup' }
  const files = zip.names.filter((file) => /^trials\/[^/]+\.json$/.test(file))
  return { ok: true, zip, around, files }
}

async function takeSurroundings(
  store: Store,
  around: NonNullable<ReturnType<typeof backupSurroundings>>,
  record: RestoreRecord,
): Promise<void> {
  await store.transaction(
    'rw',
    [store.kitchen, store.houses, store.settings, store.drafts],
    async () => {
      const here = new Set(await store.kitchen.toCollection().primaryKeys())
      await store.kitchen.bulkAdd(around.kitchen.filter((thing) => !here.has(thing.id)))
      const housesHere = new Set(await store.houses.toCollection().primaryKeys())
      await store.houses.bulkAdd(around.houses.filter((house) => !housesHere.has(house.id)))
      await store.settings.put({ ...(await storedSettings(store)), ...around.settings })
      await keepRestoreRecord(store, record)
    },
  )
}

type ReadOne = { file: string; whole: WholeTrial } | { file: string; left: LeftOut }

/** Some trials of the backup, read and checked: each its trial, or why there is none. */
export function readSome(zip: ZipReader, files: readonly string[]): ReadOne[] {
  const bytes = zip.read(files)
  return files.map((file) => {
    const packed = bytes[file]
    const unread = { file, question: null }
    if (!packed) return { file, left: { ...unread, because: 'broken-bytes', troubles: [] } }
    const read = readTrialFile(strFromU8(packed))
    if (read.ok) return { file, whole: read.whole }
    return { file, left: { ...unread, because: 'trouble', troubles: read.troubles.slice(0, 5) } }
  })
}

export async function takeSome(
  store: Store,
  newId: () => string,
  some: readonly ReadOne[],
  before: RestoreRecord,
  /** Told of each trial that would come in: then nothing is written. */
  wouldComeIn?: (question: string | null) => void,
): Promise<RestoreRecord> {
  const record = { ...before, left: [...before.left] }
  for (const one of some) {
    if ('left' in one) {
      record.left.push(one.left)
      continue
    }
    const told = { file: one.file, question: questionOf(one.whole), troubles: [] }
    try {
      const outcome = await takeIn(store, newId, one.whole, false, wouldComeIn !== undefined)
      if (!outcome.ok) {
        const covered = 'uncovers' in outcome && outcome.uncovers === true
        const question = covered ? null : told.question
        record.left.push({ ...told, question, because: 'other-content' })
      } else if (outcome.already) record.already += 1
      else {
        record.cameIn += 1
        wouldComeIn?.(told.question)
      }
    } catch (failure) {
      if (!isDamaged(failure)) throw failure
      record.left.push({ ...told, because: 'damaged-here' })
    }
  }
  return record
}

/** What a trial asks; while it is sealed nothing of it may be told, a question may hold a level. */
const questionOf = (whole: WholeTrial) => (sealed(whole) ? null : planInForce(whole).question)

/** Puts back the pictures of these trials whose photo is here and that are not here themselves; the files of those that are damaged. */
async function restorePictures(
  store: Store,
  zip: ZipReader,
  some: readonly ReadOne[],
): Promise<string[]> {
  const listed = new Set(zip.names)
  const lost: string[] = []
  for (const one of some) {
    if (!('whole' in one)) continue
    const photos = one.whole.photos.map((photo) => ({
      ...{ photo, file: `pictures/${pictureFile(photo)}` },
    }))
    const packed = zip.read(photos.map(({ file }) => file).filter((file) => listed.has(file)))
    await store.transaction('rw', [store.photos, store.pictures], async () => {
      for (const { photo, file } of photos) {
        const bytes = packed[file]
        const here = await store.photos.get(photo.id)
        if (!listed.has(file) || here?.trialId !== photo.trialId) continue
        if (await store.pictures.get(photo.id)) continue
        if (!bytes) {
          lost.push(file)
          continue
        }
        const blob = new Blob([new Uint8Array(bytes)], { type: photo.mediaType })
        await store.pictures.put({ id: photo.id, trialId: photo.trialId, blob })
      }
    })
  }
  return lost
}
