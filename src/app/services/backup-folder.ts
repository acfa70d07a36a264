import { Dexie, type Table } from 'dexie'
import type { FolderTrouble } from '@/core/wording/files/backup-folder-text.ts'

/** The folder that a baker chose for their backup, with when it was last written to (ms). */
export interface BackupFolder {
  key: 'folder'
  handle: FileSystemDirectoryHandle
  writtenAt: number | null
  /** Sealed trials in what was last written. */
  sealed: number
}

const fileName = 'evenhand-backup.zip'
const beforeName = 'evenhand-backup-before.zip'

/** Apart from the notebook: the handle of a folder means something on this device alone, and stands in no backup. */
function devices(): Dexie & { folder: Table<BackupFolder, string> } {
  const database = new Dexie('evenhand-folder')
  database.version(1).stores({ folder: 'key' })
  return database as Dexie & { folder: Table<BackupFolder, string> }
}

let opened: ReturnType<typeof devices> | undefined
function kept(): Table<BackupFolder, string> {
  opened ??= devices()
  return opened.folder
}

/** Whether this browser lets a person choose a folder. */
export const foldersOffered = () => typeof window.showDirectoryPicker === 'function'

export const backupFolder = () => kept().get('folder')

/** Lets the person choose a folder and keeps it; false when they chose none. Only at a press. */
export async function chooseFolder(): Promise<boolean> {
  try {
    const handle = await window.showDirectoryPicker?.({
      ...{ id: 'backup', mode: 'readwrite', startIn: 'documents' },
    } as const)
    if (!handle) return false
    await kept().put({ key: 'folder', handle, writtenAt: null, sealed: 0 })
    return true
  } catch (failure) {
    if (failure instanceof DOMException && failure.name === 'AbortError') return false
    throw failure
  }
}

export const forgetFolder = () => kept().delete('folder')

/** Whether the folder may be written to now; a browser asks anew after a restart, and only at a press. */
export async function mayWrite(
  { handle }: Pick<BackupFolder, 'handle'>,
  { ask }: { ask: boolean },
): Promise<boolean> {
  const mode = { mode: 'readwrite' } as const
  // Where a browser knows no such question, the writing itself tells.
  if ((await handle.queryPermission?.(mode)) === 'granted' || !handle.queryPermission) return true
  return ask && (await handle.requestPermission?.(mode)) === 'granted'
}

/**
 * Writes a backup into the folder, whole or not at all: the browser swaps the file in once it is closed. What was written on
 * another day stays beside it as the backup before.
 */
export async function writeInto(
  folder: BackupFolder,
  { zip, sealed, at }: { zip: Blob; sealed: number; at: number },
): Promise<FolderTrouble | null> {
  const { handle } = folder
  try {
    const before = await fileIn(handle, fileName)
    if (before && dayOf(before.lastModified) !== dayOf(at)) await put(handle, beforeName, before)
    await put(handle, fileName, zip)
  } catch (failure) {
    return troubleOf(failure)
  }
  await kept().put({ ...folder, writtenAt: at, sealed })
  return null
}

const dayOf = (at: number) => new Date(at).toDateString()

async function fileIn(handle: FileSystemDirectoryHandle, name: string): Promise<File | null> {
  try {
    return await (await handle.getFileHandle(name)).getFile()
  } catch (failure) {
    // A folder that was never written to; that it is gone itself shows when it is written to.
    if (failure instanceof DOMException && failure.name === 'NotFoundError') return null
    throw failure
  }
}

async function put(handle: FileSystemDirectoryHandle, name: string, content: Blob): Promise<void> {
  const file = await handle.getFileHandle(name, { create: true })
  const writable = await file.createWritable()
  await writable.write(content)
  await writable.close()
}

function troubleOf(failure: unknown): FolderTrouble {
  const name = failure instanceof DOMException ? failure.name : ''
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'not-allowed'
  if (name === 'NotFoundError') return 'gone'
  return name === 'QuotaExceededError' ? 'full' : 'not-written'
}
