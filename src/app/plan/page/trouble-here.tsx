import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { usePlanPage } from './plan-page-context.ts'
import styles from './trouble-here.module.css'

/** What is wrong with a whole part (too few levels, no flour), or wants a thought, said in the part itself. */
export function TroubleHere({ at }: { at: string }) {
  const trouble = usePlanPage((page) => page.troubles.find((each) => each.path === at))
  if (!trouble) return null
  if (trouble.severity === 'ask') return <p className={styles.ask}>{trouble.text}</p>
  return (
    <p className={styles.trouble}>
      <WarningMark /> {trouble.text}
    </p>
  )
}
