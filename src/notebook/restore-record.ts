import * as z from 'zod/mini'
import { wholeShape } from '@/core/record/count.ts'
import { atShape } from '@/core/record/id-and-stamp.ts'
import type { FileTrouble } from '@/trial-file/trouble.ts'
import type { Settings } from './settings-record.ts'
import type { Store } from './store.ts'

/** Why a trial of a backup was left out, or stands as it was. */
export type LeftBecause = 'other-content' | 'trouble' | 'broken-bytes' | 'damaged-here'

/** One trial that did not come in: its file in the backup, its question where it may be told, and why. */
export interface LeftOut {
  file: string
  question: string | null
  because: LeftBecause
  troubles: FileTrouble[]
}

/** How a restore ended; null while it runs, or when it was cut short with its window. */
export type RestoreEnd = 'whole' | 'stopped' | 'out-of-room' | 'failed'

/** What came of reading a backup, kept with the trials that came in, so that a cut-short restore tells how far it was. */
export interface RestoreRecord {
  file: string
  at: number
  total: number
  cameIn: number
  already: number
  left: LeftOut[]
  /** Pictures that are damaged in the backup, by their files in it: their trials are here without them. */
  picturesLost: string[]
  ended: RestoreEnd | null
}

/** What a backup would do to this notebook, before it does. */
export interface WouldRestore {
  file: string
  total: number
  /** What the trials ask that would come in; null for one that is sealed, whose question may name a level. */
  comeIn: (string | null)[]
  already: number
  left: LeftOut[]
  houses: number
  kitchenThings: number
  /** Settings that would be another than they are here. */
  settings: Partial<Pick<Settings, 'appearance' | 'temperatureUnit' | 'figures'>>
}

const restoreRecordShape = z.strictObject({
  file: z.string(),
  at: atShape,
  total: wholeShape,
  cameIn: wholeShape,
  already: wholeShape,
  left: z.array(
    z.strictObject({
      file: z.string(),
      question: z.nullable(z.string()),
      because: z.enum(['other-content', 'trouble', 'broken-bytes', 'damaged-here']),
      troubles: z.array(z.custom<FileTrouble>((each) => typeof each === 'object')),
    }),
  ),
  picturesLost: z.prefault(z.array(z.string()), []),
  ended: z.nullable(z.enum(['whole', 'stopped', 'out-of-room', 'failed'])),
})

const key = 'restore'

/** The record of the last restore, until the person has put it away. */
export async function storedRestoreRecord(store: Store): Promise<RestoreRecord | undefined> {
  const text = (await store.drafts.get(key))?.values.record
  if (text === undefined) return undefined
  const read = restoreRecordShape.safeParse(JSON.parse(text))
  return read.success ? read.data : undefined
}

/** Writes the record, within whatever transaction the caller stands in. */
export async function keepRestoreRecord(store: Store, record: RestoreRecord): Promise<void> {
  await store.drafts.put({ key, values: { record: JSON.stringify(record) } })
}

export async function dropRestoreRecord(store: Store): Promise<void> {
  await store.drafts.delete(key)
}
