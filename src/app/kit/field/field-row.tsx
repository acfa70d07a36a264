import type { ReactNode } from 'react'
import styles from './field-row.module.css'

/** Fields side by side where there is room, under each other on a phone. */
export function FieldRow({ children }: { children: ReactNode }) {
  return <div className={styles.row}>{children}</div>
}
