import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import styles from './frame.module.css'
import { PageTitle } from './page-title.tsx'

/** What stands at every place but bench and plan of a trial that this device helps with: it is kept on the baker's. */
export function HelpingPage({ trialId }: { trialId: string }) {
  return (
    <main id="page" tabIndex={-1} className={styles.page}>
      <PageTitle parts={['At a table']} />
      <div className={styles.lonePage}>
        <PageHeading>This trial is kept on the baker’s device</PageHeading>
        <p className={styles.lead}>
          This device helps at its bench. Tasting, findings and report stand there; the plan comes
          here as it is kept, and can be handed to this device.
        </p>
        <LinkButton href={`#/trial/${trialId}/bench`} kind="primary">
          To the bench
        </LinkButton>
        <LinkButton href="#/join">The open table</LinkButton>
      </div>
    </main>
  )
}
