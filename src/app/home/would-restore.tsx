import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { forgetLongWork, type LongWorkEnd, startRestore } from '@/app/services/long-work.ts'
import { useServices } from '@/app/services/services.ts'
import { leftOutText, wouldRestoreText } from '@/core/wording/files/backup-text.ts'
import styles from './home.module.css'

/** So many questions are listed; more are counted. */
const mostListed = 20

/** What a backup would bring, before anything of it comes in: by question, with what would be left as it is and why. */
export function WouldRestore({ end }: { end: Extract<LongWorkEnd, { is: 'would' }> }) {
  const { notebook, zone } = useServices()
  const { would, zip } = end
  const more = would.comeIn.length - mostListed
  return (
    <Section title={`What ${would.file || 'the backup'} would do`}>
      <p role="status">{wouldRestoreText(would).join(' ')}</p>
      <ul className={styles.troubles}>
        {would.comeIn.slice(0, mostListed).map((question, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: questions may be alike, and the list never changes
          <li key={at}>{question ?? 'A trial under cover'}</li>
        ))}
        {more > 0 ? <li>and {more} more</li> : null}
        {would.left.map((left) => (
          <li key={left.file}>{leftOutText(left)}</li>
        ))}
      </ul>
      <FieldRow>
        <Button kind="primary" onPress={() => startRestore(notebook.name, zone, zip)}>
          Restore it
        </Button>
        <Button onPress={forgetLongWork}>Leave the notebook as it is</Button>
      </FieldRow>
    </Section>
  )
}
