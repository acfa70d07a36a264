import type { FolderTrouble } from '@/core/wording/files/backup-folder-text.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { backupFolder, mayWrite, writeInto } from './backup-folder.ts'
import { quietBackup } from './long-work.ts'

/** How the folder of the backup stands after it was looked after. */
export type FolderState =
  | { is: 'none' }
  | { is: 'written' | 'waiting'; name: string; at: number | null; sealed: number }
  | { is: 'trouble'; name: string; trouble: FolderTrouble }

interface Keeping {
  notebook: Pick<OpenNotebook, 'name' | 'backupState' | 'keepBackedUp'>
  zone: string
  now: () => number
  /** At a press the browser may ask the person for leave. */
  ask: boolean
}

let underWay: Promise<FolderState> | null = null

/** Writes what is newer than the last backup into the chosen folder, where there is one and it may be written to; one at a time. */
export function keepFolder(keeping: Keeping): Promise<FolderState> {
  underWay ??= broughtUpToDate(keeping).finally(() => {
    underWay = null
  })
  return underWay
}

async function broughtUpToDate({ notebook, zone, now, ask }: Keeping): Promise<FolderState> {
  const folder = await backupFolder()
  if (!folder) return { is: 'none' }
  const { name } = folder.handle
  if (!(await mayWrite(folder, { ask }))) return { is: 'trouble', name, trouble: 'not-allowed' }
  const state = await notebook.backupState()
  const written = { is: 'written' as const, name, at: folder.writtenAt, sealed: folder.sealed }
  if (folder.writtenAt !== null && state.trials + state.houses === 0 && !state.kitchen)
    return written
  const at = now()
  const made = await quietBackup(notebook.name, zone)
  if (made === 'busy') return { ...written, is: 'waiting' }
  if (made === 'not-whole') return { is: 'trouble', name, trouble: 'not-whole' }
  const trouble = await writeInto(folder, { ...made, at })
  if (trouble) return { is: 'trouble', name, trouble }
  await notebook.keepBackedUp(at, made.held)
  return { ...written, at, sealed: made.sealed }
}
