import { createContext, useContext, useEffect, useMemo, useState } from 'react'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import { useServices } from '@/app/services/services.ts'
import { teachingTrials } from '@/app/services/teaching-trials.ts'
import { useLearned } from '@/app/worker/use-learned.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Learned } from '@/core/learned/learned.ts'
import { workForPlan } from '@/core/learned/learned-mixing-work.ts'
import { spreadForPlan } from '@/core/learned/learned-spread.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** What the notebook's trials taught, as of when the plan was opened; null until that is worked out. */
export const LearnedContext = createContext<Learned | null>(null)

/** Reads the trials once the page stands, and has learned from them off the screen. */
export function useReadLearned(): Learned | null {
  const { notebook } = useServices()
  const [trials, setTrials] = useState<WholeTrial[]>()
  const watch = useThrown()
  useEffect(() => {
    let here = true
    watch(teachingTrials(notebook).then((read) => here && setTrials(read)))
    return () => {
      here = false
    }
  }, [notebook, watch])
  return useLearned(trials)
}

/** The mixing work learned of the way a plan mixes; null while there is none. */
export function useLearnedWork(plan: Plan, kitchen: readonly KitchenThing[]) {
  const learned = useContext(LearnedContext)
  return useMemo(
    () => learned && workForPlan(learned.work, plan, kitchen),
    [learned, plan, kitchen],
  )
}

/** The spread learned of a plan's tasters; null while there is none. */
export function useLearnedSpread({ tasters }: Pick<Plan, 'tasters'>) {
  const learned = useContext(LearnedContext)
  return useMemo(() => learned && spreadForPlan(learned.panels, { tasters }), [learned, tasters])
}
