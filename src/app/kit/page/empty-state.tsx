import type { ReactNode } from 'react'
import styles from './empty-state.module.css'

interface EmptyStateProps {
  title: string
  /** One sentence that teaches. */
  children: ReactNode
  /** The one next step. */
  action?: ReactNode
}

/** What stands where nothing is yet: one sentence and the one next step. */
export function EmptyState({ title, children, action }: EmptyStateProps) {
  return (
    <div className={styles.empty}>
      <p className={styles.title}>{title}</p>
      <div className={styles.words}>{children}</div>
      {action ? <div className={styles.action}>{action}</div> : null}
    </div>
  )
}
