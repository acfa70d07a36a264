import type { ReactNode } from 'react'
import styles from './standing-rail.module.css'

interface StandingRailProps {
  children: ReactNode
  /** Left out on paper, where the page draws its own. */
  onScreenOnly?: boolean
}

/** What holds the rail of a trial, or the band in its place: one width, and in sight while the page goes by. */
export function StandingRail({ children, onScreenOnly = false }: StandingRailProps) {
  return (
    <section
      aria-label="Rail"
      className={`${styles.standing} ${onScreenOnly ? styles.onScreen : ''}`}
    >
      {children}
    </section>
  )
}
