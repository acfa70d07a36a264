import { useState } from 'react'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { coveredTitle } from '@/core/seal/covered-title.ts'
import styles from './taken.module.css'

/** A trial as its line in the notebook says it. */
interface OtherTrial {
  trialId: string
  question: string
  factorName: string
  sealed: boolean
  levels: Parameters<typeof coveredTitle>[1]
}

interface Props {
  title: string
  /** What a press takes of a trial: “its plan”, “its formula”. */
  takes: string
  /** Undefined while they are read. */
  trials: readonly OtherTrial[] | undefined
  onPick: (trialId: string) => Promise<void>
  onClose: () => void
}

/** The other trials of the notebook, one of them to be taken something of; of a sealed one by a second press, which is logged. */
export function TrialPicker({ title, takes, trials, onPick, onClose }: Props) {
  const [asked, setAsked] = useState<string | null>(null)
  return (
    <Dialog title={title} open onClose={onClose}>
      {trials?.length === 0 ? <p>There is no other trial in this notebook yet.</p> : null}
      <ul className={styles.read}>
        {trials?.map(({ trialId, question, factorName, sealed: covered, levels }) => {
          const title = covered ? coveredTitle(question, levels) : question
          const asking = covered && asked === trialId
          return (
            <li key={trialId}>
              <span>
                <b>{title}</b> {factorName}
                {covered ? (
                  <>
                    {'. '}
                    Its tasting is sealed
                    {asking
                      ? `: ${takes.replace('its', 'the')} gives its levels and weights away. The look is written into its log for good, and its report says so.`
                      : '.'}
                  </>
                ) : null}
              </span>
              <Button
                size="small"
                onPress={() => (covered && !asking ? setAsked(trialId) : onPick(trialId))}
                label={`${asking ? 'Look, and use' : 'Use'} ${takes}: ${title}`}
              >
                {asking ? `Look, and use ${takes}` : `Use ${takes}`}
              </Button>
            </li>
          )
        })}
      </ul>
    </Dialog>
  )
}
