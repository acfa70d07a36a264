import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { Mixer } from '@/core/kitchen/kitchen-record.ts'
import type { MixerWork } from '@/core/learned/learned-mixing-work.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import { mixingWorkText, untoldText } from '@/core/wording/findings/learned-text.ts'
import styles from './kitchen.module.css'
import { LearnedTrials } from './learned-trials.tsx'

interface LearnedWorkProps {
  work: MixerWork
  /** The mixer's entry; null where none is named. */
  mixer: Mixer | null
  /** What it is called: the entry, or the way of mixing. */
  name: string
  questions: ReadonlyMap<string, string>
}

/** The mixing work that the notebook has learned, what it rests on, and the press that puts it into the mixer's entry. */
export function LearnedWork({ work, mixer, name, questions }: LearnedWorkProps) {
  const { notebook } = useServices()
  const kept = work.ok ? roundToStep(work.kilojoulesPerKilogram, 0.1) : null
  const untold = untoldText(work)
  return (
    <div className={styles.learned}>
      <p>
        <b>{name}. </b>
        {mixingWorkText(work)}
      </p>
      {untold ? <p className={styles.why}>{untold}</p> : null}
      {work.ok ? (
        <div className={styles.learnedFoot}>
          {mixer && kept !== null && canStand(kept) ? (
            mixer.workKilojoulesPerKilogram === kept ? (
              <span className={styles.why}>In use in this entry.</span>
            ) : (
              <Button
                size="small"
                label={`Use ${plainNumber(kept)} kJ per kg for ${mixer.name}`}
                onPress={() =>
                  notebook.keepKitchenThing({ ...mixer, workKilojoulesPerKilogram: kept })
                }
              >
                Use {plainNumber(kept)} kJ per kg
              </Button>
            )
          ) : null}
          <LearnedTrials trialIds={work.trialIds} questions={questions} about={name} />
        </div>
      ) : null}
    </div>
  )
}

/** A mixer's entry holds -30 to 100 kJ per kg. */
const canStand = (work: number) => work >= -30 && work <= 100
