import { useCallback, useMemo, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import { useStore } from 'zustand'
import { type MenuEntry, useMenuOfPage } from '@/app/kit/page/page-menu.ts'
import { FileInput } from '@/app/kit/press/file-input.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import { useWatched } from '@/app/kit/press/use-watched.ts'
import { longWork, startBackup, startLook } from '@/app/services/long-work.ts'
import { useServices } from '@/app/services/services.ts'
import { BackupDesk } from './backup-desk.tsx'
import { BackupDialog } from './backup-dialog.tsx'
import { FileAnswers } from './file-answers.tsx'
import styles from './home.module.css'
import type { ReadIn } from './use-read-in.ts'

interface FileDeskProps {
  reading: ReadIn
  /** Further entries of the menu, after those of files. */
  shelves: readonly MenuEntry[]
}

/**
 * Trial files in, backups out and in: everything that passes between this notebook and files. What can be done stands in the
 * one menu of the head, but for a backup or restore while one runs; on the page stands what came of it.
 */
export function FileDesk({ reading, shelves }: FileDeskProps) {
  const { notebook, now, zone } = useServices()
  const [, go] = useLocation()
  const watch = useWatched()
  const busy = useStore(longWork, (state) => state.running !== null)
  const trialFile = useRef<HTMLInputElement>(null)
  const backupFile = useRef<HTMLInputElement>(null)

  const [asking, setAsking] = useState<number | null>(null)
  const backUp = useCallback(() => {
    setAsking(null)
    const at = now()
    const day = new Date(at).toISOString().slice(0, 10)
    return startBackup(notebook.name, zone, ({ zip, held }) => {
      saveFile(`evenhand-backup-${day}.zip`, zip)
      watch(notebook.keepBackedUp(at, held))
    })
  }, [notebook, now, zone, watch])
  const askOrBackUp = useCallback(async () => {
    const all = await notebook.summaries({ archived: true, binned: true })
    const sealed = all.filter((summary) => summary.sealed).length
    if (sealed > 0) return setAsking(sealed)
    await backUp()
  }, [notebook, backUp])
  const restore = async ([zip]: File[]) => {
    if (zip && !busy) await startLook(notebook.name, zone, zip)
  }

  useMenuOfPage(
    useMemo(() => {
      const files = [
        { words: 'Read in a trial file', act: () => trialFile.current?.click() },
        { words: 'Import scores', act: () => go('/scores') },
        { words: 'See trials together', act: () => go('/together') },
      ]
      const backups = [
        { words: 'Back up all', act: () => watch(askOrBackUp()) },
        { words: 'Restore a backup', act: () => backupFile.current?.click() },
      ]
      return [files, busy ? [] : backups, shelves].filter((group) => group.length > 0)
    }, [busy, shelves, go, watch, askOrBackUp]),
  )

  return (
    <div className={styles.desk}>
      <FileInput
        input={trialFile}
        accept=".json,application/json"
        multiple
        onFiles={reading.readIn}
      />
      <FileInput input={backupFile} accept=".zip,application/zip" onFiles={restore} />
      {asking === null ? null : (
        <BackupDialog sealed={asking} onBackUp={backUp} onClose={() => setAsking(null)} />
      )}
      <BackupDesk />
      <FileAnswers reading={reading} />
    </div>
  )
}
