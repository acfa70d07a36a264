import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import styles from './frame.module.css'
import { PageTitle } from './page-title.tsx'

/** An address that leads nowhere: says so, and the way back. */
export function LostPage({ trial }: { trial?: boolean }) {
  return (
    <div className={styles.lonePage}>
      <PageTitle parts={['Nothing here']} />
      <PageHeading>
        {trial ? 'This trial is not in the notebook' : 'Nothing at this address'}
      </PageHeading>
      <p>
        {trial
          ? 'It may be in another browser or on another device, or it was erased here. A trial file or a backup brings it back.'
          : 'The address may be mistyped or cut short. Every trial has its places under its own address; the notebook lists them all.'}
      </p>
      <LinkButton href="#/" kind="primary">
        Open the notebook
      </LinkButton>
    </div>
  )
}
