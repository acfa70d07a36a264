import { useLiveQuery } from 'dexie-react-hooks'
import { Button } from '@/app/kit/button.tsx'
import { Dialog } from '@/app/kit/dialog.tsx'
import { useServices } from '@/app/services/services.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import styles from './formula-section.module.css'
import { usePlanStore } from './plan-page-context.ts'
import { withFormula } from './replace-formula.ts'

/** Takes the formula of another trial of the notebook. */
export function EarlierFormula({ onClose }: { onClose: () => void }) {
  const store = usePlanStore()
  const { notebook, newId } = useServices()
  const here = store.getState().plan.trialId
  const trials = useLiveQuery(() => notebook.summaries({ archived: true }), [notebook])
  const others = trials?.filter(({ trialId }) => trialId !== here)
  const take = async (trialId: string) => {
    const whole = await notebook.wholeTrial(trialId)
    if (!whole) return onClose()
    const { plan, takeOut } = store.getState()
    takeOut({
      id: 'ingredient/',
      what: 'the formula before',
      plan: withFormula(plan, planInForce(whole).formula, newId),
      restore: (now) => ({
        ...now,
        formula: plan.formula,
        factor: plan.factor,
        sharedDoses: plan.sharedDoses,
        levels: plan.levels,
      }),
    })
    onClose()
  }
  return (
    <Dialog title="Start from an earlier trial" open onClose={onClose}>
      {others?.length === 0 ? <p>There is no other trial in this notebook yet.</p> : null}
      <ul className={styles.read}>
        {others?.map(({ trialId, question, factorName }) => (
          <li key={trialId}>
            <span>
              <b>{question}</b> {factorName}
            </span>
            <Button
              size="small"
              onPress={() => take(trialId)}
              label={`Use the formula of ${question}`}
            >
              Use its formula
            </Button>
          </li>
        ))}
      </ul>
    </Dialog>
  )
}
