import { useLiveQuery } from 'dexie-react-hooks'
import { Notice } from '@/app/kit/page/notice.tsx'
import { useServices } from '@/app/services/services.ts'
import { backupStateText } from '@/core/wording/files/backup-text.ts'
import { backupDue } from '@/notebook/backup-state.ts'
import { BackupFolder } from './backup-folder.tsx'
import styles from './home.module.css'

/** What is in no backup yet: a quiet line, and a reminder once there is work to lose and the last backup is a week old. */
export function BackupReminder() {
  const { notebook, now } = useServices()
  const state = useLiveQuery(() => notebook.backupState(), [notebook])
  if (!state || (state.at === null && state.trials + state.houses === 0)) return null
  const text = backupStateText(state, now())
  return (
    <>
      {backupDue(state, now()) ? (
        <Notice kind="caution" title="Time for a backup">
          {text} This notebook lives in this browser alone: clearing the site’s data takes it away.
        </Notice>
      ) : (
        <p className={styles.soft}>{text}</p>
      )}
      <BackupFolder />
    </>
  )
}
