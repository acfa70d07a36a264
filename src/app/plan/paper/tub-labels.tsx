import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useLatestSession } from '@/app/plan/page/use-letters.ts'
import { tubTicks } from '@/core/trial/tub-ticks.ts'
import { dateText } from '@/core/wording/words/date-text.ts'
import { shortenedText } from '@/core/wording/words/shortened-text.ts'
import styles from './tub-labels.module.css'

/** So much of a question stands in two lines of a label. */
const mostLetters = 60

/** From so many boxes on they stand closer, in two columns. */
const manyTicks = 8

/**
 * Labels for the tubs of the latest session: its trial, number and day, the letter, and a box for each step with room for the
 * time. A tub tells its letter and never its level, whoever may see it.
 */
export function TubLabels() {
  const plan = usePlanPage((page) => page.plan)
  const session = useLatestSession()
  if (!session) return null
  const letters = session.dealt.letters.map(({ letter }) => letter).toSorted(byLength)
  const ticks = tubTicks(plan)
  return (
    <div className={styles.page}>
      <p className={styles.cut}>
        Cut along the dashed lines. A letter says nothing of the level: letters were drawn.
      </p>
      <ol className={styles.labels}>
        {letters.map((letter) => (
          <li key={letter} className={styles.label}>
            <div className={styles.head}>
              <b>{shortenedText(plan.question, mostLetters)}</b>
              <span>
                Session {session.number}
                <br />
                {dateText(session.createdAt, session.zone)}
              </span>
            </div>
            <span className={styles.letter}>{letter}</span>
            <ul className={`${styles.ticks} ${ticks.length < manyTicks ? '' : styles.many}`}>
              {ticks.map(({ key, name, turn }) => (
                <li key={key}>
                  <i className={styles.box} />
                  <span>{turn === null ? name : `${name} ${turn}`}</span>
                  <i className={styles.blank} />
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </div>
  )
}

/** A to Z, then AA. */
const byLength = (one: string, other: string) =>
  one.length - other.length || one.localeCompare(other)
