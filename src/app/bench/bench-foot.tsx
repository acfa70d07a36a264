import type { ReactNode } from 'react'
import { UndoButton } from '@/app/bench/log/undo-button.tsx'
import styles from './bench-foot.module.css'

/** What never leaves the screen at the bench: the other lines' clocks, and undo. */
export function BenchFoot({ device, children }: { device: string; children: ReactNode }) {
  return (
    <div className={styles.foot}>
      {children}
      <UndoButton device={device} />
    </div>
  )
}
