import { navigate } from 'wouter/use-hash-location'
import { Button } from '@/app/kit/press/button.tsx'
import { usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { applyRemedy } from '@/core/fairness/apply-remedy.ts'
import type { Remedy } from '@/core/fairness/remedy.ts'
import { remedyText } from '@/core/wording/fairness/remedy-text.ts'

/** A remedy that the lock keeps out of this trial: one press opens a trial that follows, with the remedy in its plan. */
export function FollowUpPress({ remedy }: { remedy: Remedy }) {
  const store = usePlanStore()
  const { trial } = useWholeTrial()
  const { notebook, newId, now, zone } = useServices()
  const { plan } = store.getState()
  const begin = async () => {
    const { followingPlan } = await import('@/core/plan-edits/follow-up/follow-up-plan.ts')
    const next = applyRemedy(store.getState().plan, remedy)
    const trialId = await notebook.createTrial(followingPlan(next, { newId, at: now(), zone }), {
      follows: { trialId: trial.id, how: 'repeats' },
      note: trial.note,
    })
    navigate(`/trial/${trialId}/plan`)
  }
  return (
    <Button size="small" onPress={begin}>
      {remedyText(remedy, plan)}, in a follow-up
    </Button>
  )
}
