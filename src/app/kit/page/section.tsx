import { type ReactNode, useId } from 'react'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { InFold, useInFold } from './in-fold.ts'
import styles from './section.module.css'

interface SectionProps {
  title: string
  children: ReactNode
  id?: string
  /** Stands at the end of the heading's line. */
  aside?: ReactNode
  level?: 2 | 3
}

/** A part of a page: a rule, its heading, then its matter. In a fold the fold's line is its heading. */
export function Section({ title, children, id, aside, level = 2 }: SectionProps) {
  const own = useId()
  const inFold = useInFold()
  const Heading = level === 2 ? 'h2' : 'h3'
  if (inFold)
    return (
      <InFold value={false}>
        <div className={styles.folded} id={id}>
          {aside ? <div className={styles.aside}>{aside}</div> : null}
          {children}
        </div>
      </InFold>
    )
  return (
    <section className={styles.section} aria-labelledby={`${own}-title`} id={id}>
      <div className={styles.head}>
        <Heading id={`${own}-title`} {...landing}>
          {title}
        </Heading>
        {aside ? <div className={styles.aside}>{aside}</div> : null}
      </div>
      {children}
    </section>
  )
}
