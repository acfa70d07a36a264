import { useLiveQuery } from 'dexie-react-hooks'
import { useContext } from 'react'
import { Link } from 'wouter'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { useServices } from '@/app/services/services.ts'
import { houseInForce } from '@/core/house/house-record.ts'
import { coveredTrials } from '@/core/lesson/covered-trials.ts'
import { restsOnText } from '@/core/wording/house/house-text.ts'
import { lessonCovers } from '@/core/wording/lesson/lesson-covers.ts'
import styles from './house-shelf.module.css'

/** The house formulas of the notebook, the one changed last first; nothing while there are none. */
export function HouseShelf() {
  const { notebook } = useServices()
  const lessons = useContext(LessonsContext)
  const houses = useLiveQuery(() => notebook.houses(), [notebook])
  if (!houses || houses.length === 0) return null
  return (
    <Section title="House formulas">
      <ul className={styles.houses}>
        {houses.map((house) => {
          const { restsOn } = houseInForce(house)
          const rests = restsOn.at(-1)
          const covered = coveredTrials(
            restsOn.map(({ trialId }) => trialId),
            lessons,
          )
          return (
            <li key={house.id}>
              <Link href={`/house/${house.id}`} className={styles.house ?? ''}>
                {/* Its name may hold the level: it is covered with what it rests on. */}
                <b>{covered.length > 0 ? 'A house formula' : house.name}</b>
                {rests ? (
                  <span className={styles.rests}>
                    {covered.length > 0 ? lessonCovers.line : restsOnText(rests)}
                  </span>
                ) : null}
              </Link>
            </li>
          )
        })}
      </ul>
    </Section>
  )
}
