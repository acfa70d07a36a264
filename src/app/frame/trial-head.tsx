import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import { LevelRail } from '@/app/kit/rail/level-rail.tsx'
import { SealedBand } from '@/app/kit/rail/sealed-band.tsx'
import { StandingRail } from '@/app/kit/rail/standing-rail.tsx'
import { useTableDevice } from '@/app/services/table-device.ts'
import { levelsUnknown } from '@/core/seal/sealed.ts'
import type { TrialCover } from '@/core/seal/trial-cover.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import styles from './frame.module.css'
import { TakeDevice } from './take-device.tsx'

interface TrialHeadProps {
  whole: WholeTrial
  cover: TrialCover
  placeName: string
}

/** The head of every place of a trial: what it asks, and the way back from the table. */
export function TrialHead({ whole, cover, placeName }: TrialHeadProps) {
  const atTable = useTableDevice().trialId === whole.trial.id
  return (
    <section
      className={`${styles.trialHead} ${placeName === 'report' ? styles.onScreen : ''}`}
      aria-label="Trial"
    >
      <p className={styles.question}>{cover.title}</p>
      {atTable ? <TakeDevice trialId={whole.trial.id} /> : null}
    </section>
  )
}

/** The rail of a trial over a place of it, or the sealed band (Plan, where levels are set, brings its own rail); its letters where they can be true of one session alone. */
export function TrialRail({ whole, cover, placeName }: TrialHeadProps) {
  const { levelId, pick } = useCurrentLevel()
  const plan = planInForce(whole)
  if (cover.covered)
    return (
      <StandingRail onScreenOnly={placeName === 'report'}>
        <SealedBand ballots={ballotsOf(whole, cover)} />
      </StandingRail>
    )
  if (plan.levels.length === 0 || placeName === 'plan') return null
  // At the bench a tab brings its dough to the front; elsewhere a second press puts its light out.
  const press = (pressed: string) =>
    pick(pressed === levelId && placeName !== 'bench' ? null : pressed)
  return (
    <StandingRail onScreenOnly={placeName === 'report'}>
      <LevelRail
        levels={plan.levels}
        factorName={plan.factor.name}
        unitOfMeasure={plan.factor.unitOfMeasure}
        letters={lettersShown(whole, placeName)}
        currentLevelId={levelId}
        onPick={press}
      />
    </StandingRail>
  )
}

/** The bench shows the session in work; every other place pools all of them, and letters hold for one alone. */
function lettersShown(whole: WholeTrial, placeName: string) {
  const { sessions } = whole
  if (placeName !== 'bench' && sessions.length !== 1) return undefined
  const latest = sessions.toSorted((a, b) => a.number - b.number).at(-1)
  if (levelsUnknown(latest, whole.events)) return undefined
  return new Map(latest?.dealt.letters.map((each) => [each.levelId, each.letter]))
}

function ballotsOf(whole: WholeTrial, cover: TrialCover) {
  if (cover.sealed.length === 0) return null
  const tasters = cover.sealed.flatMap(({ id }) => tastingState(whole, id).tasters)
  return {
    in: tasters.reduce((total, taster) => total + taster.answered, 0),
    expected: tasters.reduce((total, taster) => total + taster.expected, 0),
  }
}
