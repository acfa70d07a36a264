import { useLiveQuery } from 'dexie-react-hooks'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { restoreLock } from '@/app/services/restore-lock.ts'
import { useServices } from '@/app/services/services.ts'
import { leftOutText, restoreText } from '@/core/wording/files/restore-text.ts'
import styles from './home.module.css'

/** What the last restore brought and what it could not, until it is put away; one of another window while it runs. */
export function RestoreReport({ running }: { running: boolean }) {
  const { notebook } = useServices()
  const found = useLiveQuery(async () => {
    const record = await notebook.restoreRecord()
    return { record, elsewhere: record?.ended === null && (await heldNow()) }
  }, [notebook])
  const record = found?.record
  if (!record || running) return null
  if (found.elsewhere)
    return (
      <p role="status">
        A restore is under way in another window: {record.cameIn + record.already} of {record.total}{' '}
        trials are here.
      </p>
    )
  return (
    <Section
      title={`Restored from ${record.file || 'a backup'}`}
      aside={
        <Button kind="quiet" size="small" onPress={() => notebook.dropRestoreRecord()}>
          Put this away
        </Button>
      }
    >
      <p role="status">{restoreText(record)}</p>
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
