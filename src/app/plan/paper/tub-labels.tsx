import { LevelRail } from '@/app/kit/rail/level-rail.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useLetters } from '@/app/plan/page/use-letters.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import styles from './print-sheets.module.css'

/** Labels for the tubs: a large letter and a line for the date; the level and its place on the rail only when not blind. */
export function TubLabels({ showsLevel }: { showsLevel: boolean }) {
  const levels = usePlanPage((page) => page.plan.levels)
  const factor = usePlanPage((page) => page.plan.factor)
  const letters = useLetters()
  const tubs = levels
    .flatMap((level) => {
      const letter = letters.get(level.id)
      return letter === undefined ? [] : [{ level, letter }]
    })
    .toSorted((a, b) => a.letter.localeCompare(b.letter))
  return (
    <ol className={styles.labels}>
      {tubs.map(({ level, letter }) => (
        <li key={level.id} className={styles.label}>
          <span className={styles.letter}>{letter}</span>
          {showsLevel ? (
            <>
              <LevelRail
                levels={levels}
                factorName={factor.name}
                unitOfMeasure={factor.unitOfMeasure}
                currentLevelId={level.id}
                size="picture"
              />
              <span>
                {factor.name} {levelText(level, factor.unitOfMeasure)}
              </span>
            </>
          ) : null}
          <span className={styles.line}>Date</span>
        </li>
      ))}
    </ol>
  )
}
