import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { LearnedOven } from '@/core/learned/learned-ovens.ts'
import { learnedOvenText } from '@/core/wording/findings/learned-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import styles from './kitchen.module.css'
import { LearnedTrials } from './learned-trials.tsx'

interface Props {
  learned: LearnedOven
  kitchen: readonly KitchenThing[]
  questions: ReadonlyMap<string, string>
}

/** How soon an oven is hot again by its floor readings, and the press that puts it into the oven's entry. */
export function LearnedOvenRow({ learned, kitchen, questions }: Props) {
  const { notebook } = useServices()
  const entry = kitchen.find(({ id }) => id === learned.ovenId)
  const oven = entry?.kind === 'oven' ? entry : null
  const name = oven?.name ?? 'An oven no longer kept'
  const seconds = learned.ok ? learned.recoverySeconds : null
  return (
    <div className={styles.learned}>
      <p>
        <b>{name}. </b>
        {learnedOvenText(learned)}
      </p>
      <div className={styles.learnedFoot}>
        {oven === null || seconds === null ? null : oven.recoverySeconds === seconds ? (
          <span className={styles.why}>In use in this entry.</span>
        ) : (
          <Button
            size="small"
            label={`Use ${durationText(seconds)} for ${oven.name}`}
            onPress={() => notebook.keepKitchenThing({ ...oven, recoverySeconds: seconds })}
          >
            Use {durationText(seconds)}
          </Button>
        )}
        <LearnedTrials trialIds={learned.trialIds} questions={questions} about={name} />
      </div>
    </div>
  )
}
