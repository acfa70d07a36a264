import type { ReactNode } from 'react'
import { useBench } from './bench-context.ts'
import styles from './bench-foot.module.css'
import { UndoButton } from './log/undo-button.tsx'

interface BenchFootProps {
  /** The main press. */
  children: ReactNode
  /** What stands beside it instead of the named undo, such as the way back from an entry. */
  beside?: ReactNode
}

/** What never leaves the screen at the bench: the one main press, and beside it what takes the last one back. */
export function BenchFoot({ children, beside }: BenchFootProps) {
  const { device } = useBench()
  return (
    <div className={styles.foot}>
      <div className={styles.beside}>{beside ?? <UndoButton device={device} />}</div>
      <section className={styles.main} aria-label="Main press">
        {children}
      </section>
    </div>
  )
}
