import type { ReactNode } from 'react'
import { landing } from '@/app/kit/press/keep-focus.ts'
import styles from './tasting.module.css'

interface SeatPageProps {
  /** The one thing this page is about, in large: a code, or a few words. */
  title: string
  titleLook?: 'code' | 'next' | 'words'
  /** Over the title, at the left and at the right. */
  name: string
  progress?: string
  leave?: ReactNode
  children: ReactNode
  /** The press at the foot, where no key of a ballot stands. */
  foot?: ReactNode
}

/** A page of a taster's own: one sample, one press at the foot, and nothing else. */
export function SeatPage(props: SeatPageProps) {
  const { title, titleLook = 'code', name, progress, leave, children, foot } = props
  return (
    <section className={styles.seatPage}>
      <div className={styles.seatHead}>
        <b>{name}</b>
        <span className={styles.quiet}>{progress}</span>
        {leave}
      </div>
      <h1 data-page-heading {...landing} className={styles[titleLook]} ref={arriveAt}>
        {title}
      </h1>
      {children}
      {foot ? <div className={styles.foot}>{foot}</div> : null}
    </section>
  )
}

/**
 * Moves focus, and with it the page, to what has just come to the table: the next code after a seal, the set, the thanks. A
 * keyboard goes on from there, a screen reader says it, and a phone shows it from its top.
 */
export function arriveAt(element: HTMLElement | null): void {
  if (!element) return
  window.scrollTo(0, 0)
  element.focus({ preventScroll: true })
}
