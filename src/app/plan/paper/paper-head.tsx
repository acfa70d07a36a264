import type { ReactNode } from 'react'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useLatestSession } from '@/app/plan/page/use-letters.ts'
import { dateText } from '@/core/wording/words/date-text.ts'
import styles from './paper-head.module.css'

/** The head of a working paper: its name, the question, and the session with its day, or blanks for them before one begins. */
export function PaperHead({ children }: { children: ReactNode }) {
  const question = usePlanPage((page) => page.plan.question)
  const session = useLatestSession()
  return (
    <div className={styles.head}>
      <h1>{children}</h1>
      <p>
        <b>{question}</b>{' '}
        {session ? (
          <span className={styles.together}>
            Session {session.number}, {dateText(session.createdAt, session.zone)}
          </span>
        ) : (
          <span className={styles.together}>
            Session <i className={styles.number} /> on <i className={styles.day} />
          </span>
        )}
      </p>
    </div>
  )
}
