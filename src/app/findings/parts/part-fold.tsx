import type { ReactNode } from 'react'
import styles from '@/app/findings/findings.module.css'
import { Fold } from '@/app/kit/page/fold.tsx'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'

interface PartFoldProps {
  title: string
  /** Its result in one line. */
  result: string
  /** Of the main response it stands bare and on the page; of another it names it and stands one level deeper. */
  index?: number
  name?: string
  children: ReactNode
}

/** A part of the findings as one line that says what it found, and opens. */
export function PartFold({ title, result, index = 0, name = '', children }: PartFoldProps) {
  return (
    <Fold
      name={index === 0 ? title : `${title}: ${midSentence(name)}`}
      result={boundUnits(result)}
      level={index === 0 ? 2 : 3}
    >
      <div className={styles.part}>{children}</div>
    </Fold>
  )
}
