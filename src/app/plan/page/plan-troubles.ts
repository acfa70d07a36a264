import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planProblemText } from '@/core/wording/plan/plan-problem-text.ts'
import type { PlanTrouble } from './plan-page.ts'

/** Everything that is wrong or looks wrong with a plan, in words, each at the place of the plan where it stands. */
export function planTroubles(plan: Plan, kitchen: readonly KitchenThing[]): PlanTrouble[] {
  return planProblems(plan, kitchen).map((problem) => ({
    path: problem.path,
    severity: problem.severity,
    text: planProblemText(problem),
  }))
}
