import type { ReactNode } from 'react'
import styles from './number-grid.module.css'

/** Short fields in even columns: two abreast on a phone. */
export function NumberGrid({ children }: { children: ReactNode }) {
  return <div className={styles.grid}>{children}</div>
}
