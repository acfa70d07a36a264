import { useLiveQuery } from 'dexie-react-hooks'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { forgetLongWork } from '@/app/services/long-work.ts'
import { restoreLock } from '@/app/services/restore-lock.ts'
import { useServices } from '@/app/services/services.ts'
import { leftOutText, picturesLostText, restoreText } from '@/core/wording/files/backup-text.ts'
import type { RestoreRecord } from '@/notebook/restore-record.ts'
import styles from './home.module.css'

interface RestoreReportProps {
  running: boolean
  /** What this window's own restore came to: told even where the device had no room to keep it. */
  own: RestoreRecord | null
}

/** What the last restore brought and what it could not, until it is put away; one of another window while it runs. */
export function RestoreReport({ running, own }: RestoreReportProps) {
  const { notebook } = useServices()
  const found = useLiveQuery(async () => {
    const record = await notebook.restoreRecord()
    return { record, elsewhere: record?.ended === null && (await heldNow()) }
  }, [notebook])
  const stored = found?.record
  const record = own && (!stored || stored.at <= own.at) ? own : stored
  if (!found || !record || running) return null
  const putAway = async () => {
    await notebook.dropRestoreRecord()
    forgetLongWork()
  }
  if (found.elsewhere && record === stored)
    return (
      <p role="status">
        A restore is under way in another window: {record.cameIn + record.already} of {record.total}{' '}
        trials are here.
      </p>
    )
  const pictures = picturesLostText(record)
  return (
    <Section
      title={`Restored from ${record.file || 'a backup'}`}
      aside={
        <Button kind="quiet" size="small" onPress={putAway}>
          Put this away
        </Button>
      }
    >
      <p role="status">{restoreText(record)}</p>
      {pictures === null ? null : <p>{pictures}</p>}
      {record.left.length > 0 ? (
        <ul className={styles.troubles}>
          {record.left.map((left) => (
            <li key={left.file}>{leftOutText(left)}</li>
          ))}
        </ul>
      ) : null}
    </Section>
  )
}

/** Waiting for the browser's answer must not end the live query's watch, so it is asked last. */
const heldNow = () => restoreLock.held()
