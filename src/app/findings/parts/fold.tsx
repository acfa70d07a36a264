import { type ReactNode, useState } from 'react'
import styles from '@/app/findings/findings.module.css'

/** What is folded away at first, and only made when it is opened. */
export function Fold({ title, children }: { title: string; children: ReactNode }) {
  const [open, setOpen] = useState(false)
  return (
    <details className={styles.fold} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {open ? children : null}
    </details>
  )
}
