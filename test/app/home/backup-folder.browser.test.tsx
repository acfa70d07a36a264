import { afterEach, expect, test, vi } from 'vitest'
import { page } from 'vitest/browser'
import { BackupReminder } from '@/app/home/backup-reminder.tsx'
import { forgetFolder } from '@/app/services/backup-folder.ts'
import focaccia from '../../../trials/focaccia-hydration.json?raw'
import { notebookWith, openPlace } from '../findings/open-place.tsx'

vi.setConfig({ testTimeout: 60_000 })
const slow = { timeout: 30_000 }

afterEach(async () => {
  vi.restoreAllMocks()
  await forgetFolder()
})

/** What the browser lets a person choose: this folder, or none at all. */
function offering(folder: FileSystemDirectoryHandle | null) {
  const value = folder && (async () => folder)
  Object.defineProperty(window, 'showDirectoryPicker', { value, configurable: true })
}

/** A folder of the browser's own, which is a real one to whoever writes into it. */
async function someFolder() {
  const root = await navigator.storage.getDirectory()
  return await root.getDirectoryHandle(`baking-${crypto.randomUUID()}`, { create: true })
}

test('a folder of choice gets the backup, is kept up to date, says when leave to write is lost, and is written to again once it is given', async () => {
  const folder = await someFolder()
  offering(folder)
  const { services } = await notebookWith(focaccia)
  const press = (name: string) => page.getByRole('button', { name }).click()
  const { screen } = await openPlace(services, <BackupReminder />)
  await press('Keep the backup in a folder')
  await expect
    .element(page.getByText(/^A backup is kept in “baking-.*: last written today/), slow)
    .toBeVisible()
  const written = async () => (await folder.getFileHandle('evenhand-backup.zip')).getFile()
  const bytes = new Uint8Array(await (await written()).arrayBuffer())
  // Every zip begins with the letters PK (APPNOTE 4.3.7).
  expect([...bytes.slice(0, 2)]).toEqual([0x50, 0x4b])
  expect((await services.notebook.backupState()).trials).toBe(0)
  await screen.unmount()

  // The browser was started again: it asks anew before it writes, and only at a press.
  const asks = vi
    .spyOn(FileSystemHandle.prototype as Required<FileSystemHandle>, 'queryPermission')
    .mockResolvedValue('prompt')
  const leave = vi
    .spyOn(FileSystemHandle.prototype as Required<FileSystemHandle>, 'requestPermission')
    .mockImplementation(async () => {
      asks.mockResolvedValue('granted')
      return 'granted'
    })
  const again = await openPlace(services, <BackupReminder />)
  await expect.element(page.getByText(/The browser asks again before it writes/)).toBeVisible()
  expect(leave).not.toHaveBeenCalled()
  await press('Allow it again')
  await expect.element(page.getByText(/^A backup is kept in/), slow).toBeVisible()
  await press('No folder any more')
  await expect
    .element(page.getByRole('button', { name: 'Keep the backup in a folder' }))
    .toBeVisible()
  await again.screen.unmount()
})

test('a browser without folders to choose says nothing of them', async () => {
  offering(null)
  const { services } = await notebookWith(focaccia)
  await openPlace(services, <BackupReminder />)
  await expect.element(page.getByText(/backed up|backup/).first()).toBeVisible()
  await expect.element(page.getByText(/folder/)).not.toBeInTheDocument()
})
