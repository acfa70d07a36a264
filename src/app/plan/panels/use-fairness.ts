import { createContext, useContext, useMemo } from 'react'
import { useLearnedSpread, useLearnedWork } from '@/app/plan/page/learned-context.ts'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { judgedParts } from '@/app/plan/page/read-parts.ts'
import { usePlanParts } from '@/app/plan/page/use-plan-parts.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { answerOf, useAnswer } from '@/app/worker/use-answer.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

export interface FairnessAnswer {
  items: FairnessItem[]
  /** The plan these items were found in. */
  plan: Plan
}

/** The fairness check of the open plan, asked once for all that show it; null until it is there. */
export const FairnessContext = createContext<FairnessAnswer | null>(null)

export const useFairness = () => useContext(FairnessContext)

/** Asks for the fairness check of the plan as it stands, off the screen. */
export function useAskedFairness(): FairnessAnswer | null {
  const plan = usePlanParts(judgedParts)
  const kitchen = usePlanPage((page) => page.kitchen)
  const { trial, sessions } = useWholeTrial()
  const { seed } = trial
  const learned = useLearnedWork(plan, kitchen)
  const spread = useLearnedSpread(plan)?.spread ?? null
  const question = useMemo(
    () => ({ plan, circumstances: { kitchen, trialSeed: seed, sessions, learned, spread } }),
    [plan, kitchen, seed, sessions, learned, spread],
  )
  return answerOf(
    useAnswer('plan', question, async (service, asked) => ({
      plan: asked.plan,
      items: await service.fairness(asked.plan, asked.circumstances),
    })),
  )
}
