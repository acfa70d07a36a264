import { useState } from 'react'
import { useStore } from 'zustand'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { FileButton } from '@/app/kit/press/file-button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import { longWork, startBackup, startLook } from '@/app/services/long-work.ts'
import { useServices } from '@/app/services/services.ts'
import { BackupDesk } from './backup-desk.tsx'
import { BackupDialog } from './backup-dialog.tsx'
import { BackupReminder } from './backup-reminder.tsx'
import { FileAnswers } from './file-answers.tsx'
import styles from './home.module.css'
import type { ReadIn } from './use-read-in.ts'

/** Trial files in, backups out and in: everything that passes between this notebook and files. */
export function FileDesk({ reading }: { reading: ReadIn }) {
  const { notebook, now, zone } = useServices()
  const watch = useThrown()
  const busy = useStore(longWork, (state) => state.running !== null)

  const [asking, setAsking] = useState<number | null>(null)
  const askOrBackUp = async () => {
    const all = await notebook.summaries({ archived: true, binned: true })
    const sealed = all.filter((summary) => summary.sealed).length
    if (sealed > 0) return setAsking(sealed)
    await backUp()
  }
  const backUp = () => {
    setAsking(null)
    const at = now()
    const day = new Date(at).toISOString().slice(0, 10)
    return startBackup(notebook.name, zone, (zip) => {
      saveFile(`evenhand-backup-${day}.zip`, zip)
      watch(notebook.keepBackedUp(at))
    })
  }
  const restore = async ([zip]: File[]) => {
    if (zip && !busy) await startLook(notebook.name, zone, zip)
  }

  return (
    <div className={styles.desk}>
      <div className={styles.deskButtons}>
        <FileButton accept=".json,application/json" multiple onFiles={reading.readIn}>
          Read in a trial file
        </FileButton>
        <LinkButton href="#/scores">Import scores</LinkButton>
        <LinkButton href="#/together">See trials together</LinkButton>
        <Button onPress={askOrBackUp} disabled={busy}>
          Back up all
        </Button>
        <FileButton accept=".zip,application/zip" onFiles={restore}>
          Restore a backup
        </FileButton>
      </div>
      <BackupReminder />
      {asking === null ? null : (
        <BackupDialog sealed={asking} onBackUp={backUp} onClose={() => setAsking(null)} />
      )}
      <BackupDesk />
      <FileAnswers reading={reading} />
    </div>
  )
}
