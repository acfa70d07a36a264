import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import styles from './frame.module.css'
import { PageTitle } from './page-title.tsx'
import { TakeDevice } from './take-device.tsx'

/** What stands at every other address while the device lies at a table: the way back to it, and the press that takes it away. */
export function AtTablePage({ trialId }: { trialId: string }) {
  return (
    <main id="page" tabIndex={-1} className={styles.page}>
      <PageTitle parts={['At the table']} />
      <div className={styles.lonePage}>
        <PageHeading>This device lies at the table</PageHeading>
        <p className={styles.lead}>
          A tasting goes on at it, so everything else is closed until it is taken from the table.
        </p>
        <LinkButton href={`#/trial/${trialId}/tasting`} kind="primary">
          Back to the tasting
        </LinkButton>
        <TakeDevice trialId={trialId} />
      </div>
    </main>
  )
}
