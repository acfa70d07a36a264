import type { ReactNode } from 'react'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import styles from './notice.module.css'

interface NoticeProps {
  /** `caution`: mind this before going on. `know`: good to know. */
  kind: 'caution' | 'know'
  title?: string
  children: ReactNode
}

/** A remark beside the work; not an alarm. */
export function Notice({ kind, title, children }: NoticeProps) {
  return (
    <div className={`${styles.notice} ${styles[kind]}`}>
      {title ? (
        <p className={styles.title}>
          {kind === 'caution' ? <WarningMark /> : null} {title}
        </p>
      ) : null}
      <div>{children}</div>
    </div>
  )
}
