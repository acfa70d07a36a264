import type { ReactNode } from 'react'
import styles from './notice.module.css'
import { WarningMark } from './warning-mark.tsx'

interface ErrorNoteProps {
  title: string
  /** What happened, what is safe, and the mend. */
  children?: ReactNode
  action?: ReactNode
}

/** Something went wrong: said at once, where its cause is. */
export function ErrorNote({ title, children, action }: ErrorNoteProps) {
  return (
    <div className={`${styles.notice} ${styles.error}`} role="alert">
      <p className={styles.title}>
        <WarningMark /> {title}
      </p>
      {children ? <div>{children}</div> : null}
      {action ? <div className={styles.action}>{action}</div> : null}
    </div>
  )
}
