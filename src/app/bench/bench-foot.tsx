import type { ReactNode } from 'react'
import styles from './bench-foot.module.css'
import { UndoButton } from './undo-button.tsx'

/** What never leaves the screen at the bench: the other lines' clocks, and undo. */
export function BenchFoot({ device, children }: { device: string; children: ReactNode }) {
  return (
    <div className={styles.foot}>
      {children}
      <UndoButton device={device} />
    </div>
  )
}
