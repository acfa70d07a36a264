import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { locked } from '@/core/seal/lock.ts'
import { lockedChanges } from '@/core/seal/locked-change.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { lockedText } from '@/core/wording/plan/locked-text.ts'
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

/** Why the lock of the trial refuses a change of its plan, in words; null when it allows it. */
export function lockedRefusal(whole: WholeTrial, before: Plan, next: Plan): string | null {
  if (!locked(whole)) return null
  const changes = lockedChanges(before, next)
  return changes.length > 0 ? lockedText(changes) : null
}
