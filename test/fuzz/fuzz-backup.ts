import 'fake-indexeddb/auto'
import { Dexie } from 'dexie'
import { unzipSync } from 'fflate'
import type { Chance } from '@/core/design/chance.ts'
import { createNotebook } from '@/notebook/create-notebook.ts'
import type { OpenNotebook, RestoreOutcome } from '@/notebook/notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { planOf } from '../trial-of/plan-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { type BackupFiles, mutatedBackup } from './mutated-backup.ts'

/** Something came in though it was damaged, refused, or not whole. */
export class HalfTaken extends Error {}

let names = 0

function emptyNotebook(): OpenNotebook {
  let ids = 0
  const newId = () => `made-${++ids}`
  const services = { now: () => Date.UTC(2026, 4, 9, 12), zone: 'Europe/Rome', newSeed: () => 7 }
  return createNotebook(`fuzz-${++names}`, { ...services, newId })
}

/** What is spoiled: a backup of two trials, one with a picture, and what their files say when they are read in soundly. */
export interface BackupSource {
  files: BackupFiles
  sound: ReadonlySet<string>
}

export async function backupSource(): Promise<BackupSource> {
  const notebook = emptyNotebook()
  const read = await notebook.importTrial(writeTrialFile(wholeTrialOf()))
  if (!read.ok) throw new Error('the trial of the tests reads')
  await notebook.createTrial({ ...planOf(), id: 'plan-2', trialId: 'trial-2' })
  const photo = { id: 'photo-2', trialId: 'trial-1', at: 0, widthPixels: 2, heightPixels: 2 }
  const picture = new Blob([new Uint8Array(900).fill(137)], { type: 'image/png' })
  await notebook.addPhoto({ ...photo, mediaType: 'image/png' }, picture)
  const made = await notebook.backUp()
  if (!made) throw new Error('nobody stopped it')
  const exported = ['trial-1', 'trial-2'].map(async (id) => (await notebook.exportTrial(id)).text)
  const sound = new Set(await Promise.all(exported))
  await gone(notebook)
  return { files: unzipSync(new Uint8Array(await made.zip.arrayBuffer())), sound }
}

/**
 * A spoiled backup into an empty notebook. Throws where the restore throws, where its record does not add up, where a trial
 * is half there, or where damaged bytes came in as if they were sound.
 */
export async function fuzzBackup(
  chance: Chance,
  { files, sound }: BackupSource,
): Promise<'refused' | 'answered'> {
  const { bytes, damagedOnly } = mutatedBackup(chance, files)
  const notebook = emptyNotebook()
  try {
    const outcome = await notebook.restore(new Blob([bytes]))
    await refuseHalfTaken(notebook, outcome)
    if (damagedOnly)
      for (const text of await textsOf(notebook))
        if (!sound.has(text)) throw new HalfTaken('damaged bytes came in as a sound trial')
    return outcome.ok && outcome.record.cameIn > 0 ? 'answered' : 'refused'
  } finally {
    await gone(notebook)
  }
}

async function textsOf(notebook: OpenNotebook): Promise<string[]> {
  const lines = await notebook.summaries({ archived: true, binned: true })
  return await Promise.all(
    lines.map(async ({ trialId }) => (await notebook.exportTrial(trialId)).text),
  )
}

async function refuseHalfTaken(notebook: OpenNotebook, outcome: RestoreOutcome): Promise<void> {
  const here = await notebook.summaries({ archived: true, binned: true })
  const expected = outcome.ok ? outcome.record.cameIn : 0
  if (here.length !== expected)
    throw new HalfTaken(`${expected} trials came in and ${here.length} are here`)
  if (!outcome.ok) return
  const { total, cameIn, already, left, ended } = outcome.record
  if (ended !== 'whole') throw new HalfTaken(`the restore ended ${ended}`)
  if (cameIn + already + left.length !== total) throw new HalfTaken('the record does not add up')
  for (const { trialId } of here)
    if (!(await notebook.wholeTrial(trialId)))
      throw new HalfTaken(`${trialId} is listed and not here`)
}

async function gone(notebook: OpenNotebook): Promise<void> {
  notebook.close()
  await Dexie.delete(notebook.name)
}
