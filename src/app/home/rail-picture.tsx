import { LevelRail } from '@/app/kit/rail/level-rail.tsx'
import type { Level } from '@/core/trial/level.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'

/** A trial's levels as a small rail; a covered row of blanks while its tasting is sealed. */
export function RailPicture({ summary }: { summary: Summary }) {
  if (summary.sealed)
    return (
      <div className={styles.picture}>
        <div className={styles.coveredPicture} aria-hidden="true" />
        <p className={styles.under}>levels under cover</p>
      </div>
    )
  const levels: Level[] = summary.levels.map(({ label, value }, index) => ({
    ...{ id: String(index), label, value, control: false },
  }))
  return (
    <div className={styles.picture}>
      {levels.length > 0 ? (
        <LevelRail
          levels={levels}
          factorName={summary.factorName}
          unitOfMeasure={summary.unitOfMeasure}
          size="picture"
        />
      ) : null}
    </div>
  )
}
