import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { plannedSessionsOf } from '@/core/seal/looks.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import styles from './findings.module.css'

/** One line before a look that comes early: it is recorded and stands in the report. */
export function LookFirst({ whole }: { whole: WholeTrial }) {
  const { notebook } = useServices()
  const trialId = whole.trial.id
  const latest = whole.sessions.toSorted((a, b) => a.number - b.number).at(-1)
  const look = () =>
    notebook.log({
      kind: 'findings-looked',
      trialId,
      sessionId: latest?.id ?? null,
      about: { kind: 'trial', id: trialId },
    })
  return (
    <div className={styles.look}>
      <Notice kind="caution" title="Before the last planned session">
        {plannedSessionsOf(whole.sessions)} sessions are planned and not all are tasted. Who looks
        now may stop when the answer pleases, so the look is recorded and the report says so.
      </Notice>
      <Button kind="plain" onPress={look}>
        Look now, and record it
      </Button>
    </div>
  )
}
