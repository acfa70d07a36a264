import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import styles from './frame.module.css'

/** Shown instead of the app: there is no store at all, or why it could not be opened (null for no reason of the notebook's). */
export type StartTrouble = 'no-store' | FailureReason | null

const noStore = {
  title: 'This browser keeps nothing',
  text: 'Evenhand keeps its notebook in the browser’s own database, and this browser offers none here. A private window or a strict setting is the usual cause: open the page in an ordinary window, or allow site data for this address.',
}
const unknown = {
  title: 'The notebook could not be opened',
  text: 'The browser refused to open its database. It may be short of room, or its storage may be locked. Nothing was changed. Free some room, then try again.',
}

function wordsOf(trouble: StartTrouble): { title: string; text: string } {
  if (trouble === 'no-store') return noStore
  if (trouble === null) return unknown
  const { title, kept, mend } = keepingFailureText(trouble)
  return { title, text: `${kept} ${mend}` }
}

/** The page that stands instead of the app when there is no notebook to work on. */
export function StartFailure({ trouble, detail }: { trouble: StartTrouble; detail: string }) {
  const { title, text } = wordsOf(trouble)
  return (
    <main className={styles.lonePage}>
      <PageHeading>{title}</PageHeading>
      <p>{text}</p>
      {detail && trouble === null ? (
        <p className={styles.soft}>
          The browser says: <q>{detail}</q>
        </p>
      ) : null}
      <Button kind="primary" onPress={() => window.location.reload()}>
        Reload
      </Button>
    </main>
  )
}
