import { useLiveQuery } from 'dexie-react-hooks'
import { TrialPicker } from '@/app/kit/taken/trial-picker.tsx'
import { usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'
import { takePlan } from '@/app/services/take-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

interface Props {
  title: string
  /** What a press takes of a trial: “its plan”, “its formula”. */
  takes: string
  onPick: (plan: Plan) => void
  onClose: () => void
}

/** Another trial than this, to take its plan or formula from. */
export function EarlierTrial({ title, takes, onPick, onClose }: Props) {
  const store = usePlanStore()
  const { notebook } = useServices()
  const here = store.getState().plan.trialId
  const trials = useLiveQuery(() => notebook.summaries({ archived: true }), [notebook])
  const take = async (trialId: string) => {
    const plan = await takePlan(notebook, trialId)
    if (plan) onPick(plan)
    onClose()
  }
  return (
    <TrialPicker
      title={title}
      takes={takes}
      trials={trials?.filter(({ trialId }) => trialId !== here)}
      onPick={take}
      onClose={onClose}
    />
  )
}
