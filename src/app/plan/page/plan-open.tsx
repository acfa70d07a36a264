import { useEffect, useState } from 'react'
import { useServices } from '@/app/services/services.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { LearnedContext, useReadLearned } from './learned-context.ts'
import { PlanPageBody } from './plan-page-body.tsx'
import { PlanPageContext } from './plan-page-context.ts'
import { createPlanPage } from './plan-page-store.ts'
import { planTroubles } from './plan-troubles.ts'

interface Props {
  kitchen: readonly KitchenThing[]
  drafts: Record<string, string>
  draftKey: string
}

/** One open plan: its page state, tied to the notebook, and written out whenever the page is hidden or left. */
export function PlanOpen({ kitchen, drafts, draftKey }: Props) {
  const whole = useWholeTrial()
  const { notebook, now } = useServices()
  const learned = useReadLearned()
  const [store] = useState(() =>
    createPlanPage(planInForce(whole), drafts, kitchen, {
      now,
      keepPlan: (plan) => notebook.keepPlan(plan),
      keepDrafts: (values) =>
        Object.keys(values).length === 0
          ? notebook.dropDraft(draftKey)
          : notebook.keepDraft(draftKey, values),
      judge: planTroubles,
    }),
  )
  useEffect(() => store.getState().meet(planInForce(whole)), [store, whole])
  useEffect(() => store.getState().meetKitchen(kitchen), [store, kitchen])
  useEffect(() => {
    const leave = () => void store.getState().flush()
    document.addEventListener('visibilitychange', leave)
    window.addEventListener('pagehide', leave)
    return () => {
      document.removeEventListener('visibilitychange', leave)
      window.removeEventListener('pagehide', leave)
      leave()
    }
  }, [store])
  return (
    <PlanPageContext value={store}>
      <LearnedContext value={learned}>
        <PlanPageBody />
      </LearnedContext>
    </PlanPageContext>
  )
}
