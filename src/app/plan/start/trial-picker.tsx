import { useLiveQuery } from 'dexie-react-hooks'
import { useState } from 'react'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/plan/formula/formula-section.module.css'
import { usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { logLook } from '@/app/services/log-look.ts'
import { useServices } from '@/app/services/services.ts'
import { coveredTitle } from '@/core/seal/covered-title.ts'
import { sealed } from '@/core/seal/sealed.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'

interface Props {
  title: string
  /** What a press takes of a trial: “its plan”, “its formula”. */
  takes: string
  onPick: (plan: Plan) => void
  onClose: () => void
}

/** The other trials of the notebook, one of them to be taken something of; of a sealed one by a second press, which is logged. */
export function TrialPicker({ title, takes, onPick, onClose }: Props) {
  const store = usePlanStore()
  const { notebook } = useServices()
  const here = store.getState().plan.trialId
  const trials = useLiveQuery(() => notebook.summaries({ archived: true }), [notebook])
  const others = trials?.filter(({ trialId }) => trialId !== here)
  const [asked, setAsked] = useState<string | null>(null)
  const take = async (trialId: string) => {
    const whole = await notebook.wholeTrial(trialId)
    if (whole && sealed(whole)) await logLook(notebook, whole, 'took its plan for another trial')
    if (whole) onPick(planInForce(whole))
    onClose()
  }
  return (
    <Dialog title={title} open onClose={onClose}>
      {others?.length === 0 ? <p>There is no other trial in this notebook yet.</p> : null}
      <ul className={styles.read}>
        {others?.map(({ trialId, question, factorName, sealed: covered, levels }) => {
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
                onPress={() => (covered && !asking ? setAsked(trialId) : take(trialId))}
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
