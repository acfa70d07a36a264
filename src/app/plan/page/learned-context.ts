import { createContext, useContext, useEffect, useMemo, useState } from 'react'
import { useServices } from '@/app/services/services.ts'
import { teachingTrials } from '@/app/services/teaching-trials.ts'
import { type Asked, answerOf } from '@/app/worker/use-answer.ts'
import { useLearned } from '@/app/worker/use-learned.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Learned } from '@/core/learned/learned.ts'
import { workForPlan } from '@/core/learned/learned-mixing-work.ts'
import { spreadForPlan } from '@/core/learned/learned-spread.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** What the notebook's trials taught, as of when the plan was opened. */
export const LearnedContext = createContext<Asked<Learned>>({ state: 'working' })

/** Reads the trials once the page stands, and has learned from them off the screen; a failure is for the parts that need it. */
export function useReadLearned(): Asked<Learned> {
  const { notebook } = useServices()
  const [trials, setTrials] = useState<WholeTrial[] | null>(null)
  const [failure, setFailure] = useState<Asked<Learned> | null>(null)
  useEffect(() => {
    let here = true
    teachingTrials(notebook).then(
      (read) => here && setTrials(read),
      (error: Error) => here && setFailure({ state: 'failed', error }),
    )
    return () => {
      here = false
    }
  }, [notebook])
  const learned = useLearned(trials)
  return failure ?? learned
}

/** The mixing work learned of the way a plan mixes; null while there is none. */
export function useLearnedWork(plan: Plan, kitchen: readonly KitchenThing[]) {
  const learned = answerOf(useContext(LearnedContext))
  return useMemo(
    () => learned && workForPlan(learned.work, plan, kitchen),
    [learned, plan, kitchen],
  )
}

/** The spread learned of a plan's tasters; null while there is none. */
export function useLearnedSpread({ tasters }: Pick<Plan, 'tasters'>) {
  const learned = answerOf(useContext(LearnedContext))
  return useMemo(() => learned && spreadForPlan(learned.panels, { tasters }), [learned, tasters])
}
