import { Link } from 'wouter'
import { CoveredRail } from '@/app/kit/rail/covered-rail.tsx'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import { LevelRail } from '@/app/kit/rail/level-rail.tsx'
import { useTableDevice } from '@/app/services/table-device.ts'
import type { TrialCover } from '@/core/seal/trial-cover.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import styles from './frame.module.css'
import { trialPlaces } from './places.tsx'
import { TakeDevice } from './take-device.tsx'

interface TrialHeadProps {
  whole: WholeTrial
  cover: TrialCover
  placeName: string
}

/** The head of every place of a trial: what it asks, the way through its places, and the level rail. At the table there is one way alone. */
export function TrialHead({ whole, cover, placeName }: TrialHeadProps) {
  const { levelId, pick } = useCurrentLevel()
  const atTable = useTableDevice().trialId === whole.trial.id
  const plan = planInForce(whole)
  const latest = whole.sessions.toSorted((a, b) => a.number - b.number).at(-1)
  const letters = new Map(latest?.dealt.letters.map((each) => [each.levelId, each.letter]))
  return (
    <section
      className={`${styles.trialHead} ${placeName === 'report' ? styles.onScreen : ''}`}
      aria-label="Trial"
    >
      <div className={styles.titleLine}>
        <p className={styles.question}>{cover.title}</p>
        {atTable ? <TakeDevice trialId={whole.trial.id} /> : null}
        <nav aria-label="Places of this trial" className={styles.places}>
          {(atTable ? trialPlaces.filter(({ name }) => name === placeName) : trialPlaces).map(
            ({ name, title }) => (
              <Link
                key={name}
                href={`/trial/${whole.trial.id}/${name}`}
                className={styles.way ?? ''}
                aria-current={name === placeName ? 'page' : undefined}
              >
                {title}
              </Link>
            ),
          )}
        </nav>
      </div>
      {cover.covered ? (
        <CoveredRail codes={cover.codes} />
      ) : plan.levels.length > 0 ? (
        <div className={placeName === 'findings' ? styles.railBeside : ''}>
          <LevelRail
            levels={plan.levels}
            factorName={plan.factor.name}
            unitOfMeasure={plan.factor.unitOfMeasure}
            letters={letters}
            currentLevelId={levelId}
            onPick={pick}
          />
        </div>
      ) : null}
    </section>
  )
}
