import { useState } from 'react'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { logLook } from '@/app/services/log-look.ts'
import { useServices } from '@/app/services/services.ts'
import type { Session } from '@/core/session/session-record.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { stillMissing } from '@/core/wording/bench/still-missing.ts'
import styles from './frame.module.css'

interface CoveredPageProps {
  whole: WholeTrial
  /** The sessions whose codes are kept. */
  sealed: readonly Session[]
  title: string
  /** Nobody tastes yet: cups were shuffled, and which dough is which is not known. */
  atWork: boolean
  /** Lifts the cover for this sitting; null for a place that has nothing to show before the unsealing. */
  onUncover: (() => void) | null
  /** Opens the bench with letters alone, for whoever still works while others taste; null elsewhere. */
  onWork: (() => void) | null
}

/** What stands in place of a page that would name levels while a tasting is sealed. A look is possible, said and recorded. */
export function CoveredPage({ whole, sealed, title, atWork, onUncover, onWork }: CoveredPageProps) {
  const { notebook } = useServices()
  const [asking, setAsking] = useState(false)
  const uncover = async () => {
    await logLook(notebook, whole, `bakes and does not taste (${title})`)
    onUncover?.()
  }
  return (
    <div className={styles.lonePage}>
      <PageHeading>{title}</PageHeading>
      <p className={styles.lead}>
        {atWork
          ? 'Which dough is which waits under the cups: not even this notebook knows. This page speaks of levels, so it stays covered until the tickets are turned.'
          : 'The tasting is sealed. This page would say which code is which, so it stays covered until the codes are unsealed.'}
      </p>
      {sealed.map((session) => (
        <p key={session.id}>
          {sealed.length > 1 ? <b>Session {session.number}. </b> : null}
          {stillMissing(tastingState(whole, session.id), whole.kitchen)}
        </p>
      ))}
      <LinkButton href={`#/trial/${whole.trial.id}/${atWork ? 'bench' : 'tasting'}`} kind="primary">
        {atWork ? 'To the bench' : 'To the tasting'}
      </LinkButton>
      {onWork ? <Button onPress={onWork}>Go on working, letters only</Button> : null}
      {onUncover ? (
        <Button kind="quiet" onPress={() => setAsking(true)}>
          I bake and do not taste: uncover for me
        </Button>
      ) : null}
      <Dialog
        title="Uncover this page?"
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button kind="primary" onPress={uncover}>
              Uncover
            </Button>
            <Button onPress={() => setAsking(false)}>Keep it covered</Button>
          </>
        }
      >
        <p>
          Only for eyes that do not score. The look is written into the log and said in the report.
          It holds for Plan and Bench until the device lies at the table again or the page is loaded
          again.
        </p>
      </Dialog>
    </div>
  )
}
