import type { ReactNode } from 'react'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import styles from './notice.module.css'

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
