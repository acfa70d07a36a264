import { piecesAsked } from '@/core/trial/pieces-asked.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** More samples than this tire a mouth: common practice in sensory work. */
export const mostSamples = 6

/** Everything a taster is given in one sitting: servings, warm-up and tell-apart samples. */
export function samplesPerSitting(plan: Plan): number {
  const asked = piecesAsked(plan)
  const sets = plan.tellApart ? samplesOf(plan.tellApart.test) : 0
  return asked.counted + asked.warmUp + sets
}

const samplesOf = (test: 'triangle' | 'duo-trio' | 'paired') => (test === 'paired' ? 2 : 3)
