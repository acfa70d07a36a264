import { useLiveQuery } from 'dexie-react-hooks'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import styles from '@/app/plan/formula/formula-section.module.css'
import { usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'

interface Props {
  title: string
  /** What a press takes of a trial: “its plan”, “its formula”. */
  takes: string
  onPick: (plan: Plan) => void
  onClose: () => void
}

/** The other trials of the notebook, one of them to be taken something of. */
export function TrialPicker({ title, takes, onPick, onClose }: Props) {
  const store = usePlanStore()
  const { notebook } = useServices()
  const here = store.getState().plan.trialId
  const trials = useLiveQuery(() => notebook.summaries({ archived: true }), [notebook])
  const others = trials?.filter(({ trialId }) => trialId !== here)
  const take = async (trialId: string) => {
    const whole = await notebook.wholeTrial(trialId)
    if (whole) onPick(planInForce(whole))
    onClose()
  }
  return (
    <Dialog title={title} open onClose={onClose}>
      {others?.length === 0 ? <p>There is no other trial in this notebook yet.</p> : null}
      <ul className={styles.read}>
        {others?.map(({ trialId, question, factorName }) => (
          <li key={trialId}>
            <span>
              <b>{question}</b> {factorName}
            </span>
            <Button size="small" onPress={() => take(trialId)} label={`Use ${takes}: ${question}`}>
              Use {takes}
            </Button>
          </li>
        ))}
      </ul>
    </Dialog>
  )
}
