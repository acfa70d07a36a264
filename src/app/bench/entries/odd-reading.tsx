import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import styles from './odd-reading.module.css'

/** What is said of an odd reading: what is odd and what mends it, and what it would do. */
export interface OddReadingWords {
  mend: string
  beside: string
}

/** A reading that would hardly be right, said before it is kept: type it anew, or keep it as it is. */
export function OddReading({ words: { mend, beside } }: { words: OddReadingWords }) {
  return (
    <div className={styles.odd} role="alert" {...landing}>
      <p className={styles.mend}>
        <WarningMark /> {mend}
      </p>
      {beside === '' ? null : <p>{beside}</p>}
    </div>
  )
}
