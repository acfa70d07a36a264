import type { OpenPart } from '@/core/wording/findings/open-parts.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './columns-of-three.module.css'

/** Where nothing is settled: what would have shown, what more sessions would do, what would do more. */
export function WhatIsOpen({ parts }: { parts: readonly OpenPart[] }) {
  if (parts.length === 0) return null
  return (
    <div className={styles.three}>
      {parts.map(({ title, text }) => (
        <section key={title}>
          <h2>{title}</h2>
          <p>{boundUnits(text)}</p>
        </section>
      ))}
    </div>
  )
}
