import { useEffect, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import type { StoreApi } from 'zustand'
import { ClockPage } from '@/app/plan/clock/clock-page.tsx'
import { FoundDayOf } from '@/app/plan/clock/found-day.tsx'
import { useServices } from '@/app/services/services.ts'
import { forgetUnkept, showUnkept } from '@/app/services/unkept.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { LearnedContext, useReadLearned } from './learned-context.ts'
import type { PlanPage } from './plan-page.ts'
import { PlanPageBody } from './plan-page-body.tsx'
import { PlanPageContext } from './plan-page-context.ts'
import { createPlanPage } from './plan-page-store.ts'
import { lockedRefusal, planTroubles } from './plan-troubles.ts'

interface Props {
  kitchen: readonly KitchenThing[]
  drafts: Record<string, string>
  draftKey: string
}

/** One open plan: its page state, tied to the notebook, and written out whenever the page is hidden or left. */
export function PlanOpen({ kitchen, drafts, draftKey }: Props) {
  const whole = useWholeTrial()
  const { notebook } = useServices()
  const learned = useReadLearned()
  const [location] = useLocation()
  const clock = location.endsWith('/plan/clock')
  const latest = useRef(whole)
  const [store] = useState(() =>
    createPlanPage(standing(whole), drafts, kitchen, {
      keepPlan: (plan, base) => notebook.keepPlan(plan, base),
      keepDrafts: (values) =>
        Object.keys(values).length === 0
          ? notebook.dropDraft(draftKey)
          : notebook.keepDraft(draftKey, values),
      judge: planTroubles,
      refuses: (before, next) => lockedRefusal(latest.current, before, next),
    }),
  )
  useEffect(() => {
    latest.current = whole
    store.getState().meetKept(planInForce(whole), whole.trial.revision)
  }, [store, whole])
  useEffect(() => store.getState().meetKitchen(kitchen), [store, kitchen])
  useEffect(() => {
    const key = `plan/${whole.trial.id}`
    forgetUnkept(key)
    const hide = () => void store.getState().flush()
    const leave = () =>
      void store
        .getState()
        .flush()
        .then(() => carryUnkept(key, store))
    document.addEventListener('visibilitychange', hide)
    window.addEventListener('pagehide', hide)
    return () => {
      document.removeEventListener('visibilitychange', hide)
      window.removeEventListener('pagehide', hide)
      leave()
    }
  }, [store, whole.trial.id])
  return (
    <PlanPageContext value={store}>
      <LearnedContext value={learned}>
        <FoundDayOf>
          {clock ? <ClockPage back={`#/trial/${whole.trial.id}/plan`} /> : <PlanPageBody />}
        </FoundDayOf>
      </LearnedContext>
    </PlanPageContext>
  )
}

const standing = (whole: WholeTrial) => ({
  ...{ plan: planInForce(whole), trialRevision: whole.trial.revision },
})

/** What the page could not keep before it was left goes along to every other place, until it is kept or given up. */
function carryUnkept(key: string, store: StoreApi<PlanPage>): void {
  const { notKept, waiting, plan, drafts, flush, giveUp } = store.getState()
  if (!notKept || !waiting) {
    forgetUnkept(key)
    return
  }
  const half = Object.values(drafts).filter(Boolean).join(' · ')
  showUnkept({
    ...{ key, what: `The last change of the plan “${plan.question}”`, text: half.slice(0, 300) },
    reason: notKept.reason,
    retry: async () => {
      await flush()
      carryUnkept(key, store)
    },
    giveUp: () => {
      giveUp()
      forgetUnkept(key)
    },
  })
}
