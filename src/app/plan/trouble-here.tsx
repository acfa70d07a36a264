import { WarningMark } from '@/app/kit/warning-mark.tsx'
import styles from './trouble-here.module.css'

/** What is wrong with a whole part (too few levels, no flour), said in the part itself. */
export function TroubleHere({ text }: { text: string | undefined }) {
  if (text === undefined) return null
  return (
    <p className={styles.trouble}>
      <WarningMark /> {text}
    </p>
  )
}
