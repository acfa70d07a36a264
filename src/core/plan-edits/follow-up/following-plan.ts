import type { Plan } from '@/core/trial/plan-record.ts'
import { undatedPlan } from '@/core/trial/undated-plan.ts'

interface Start {
  newId: () => string
  at: number
  zone: string
}

/** A plan as the first of a trial that follows: under its own identity, with nothing accepted yet. */
export function followingPlan(plan: Plan, { newId, at, zone }: Start): Plan {
  return { ...undatedPlan(plan), id: newId(), trialId: newId(), at, zone, accepted: [] }
}
