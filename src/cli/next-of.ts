import { toMendInTrial } from '@/core/fairness/fairness-of-trial.ts'
import { type NextStep, nextSteps } from '@/core/findings/judged/next-steps.ts'
import type { Found } from './found-shape.ts'

/** What to do next after the findings; a table of scores has no fairness items to mend first. */
export function nextOf({ findings, whole }: Found): NextStep[] {
  return nextSteps(findings, { toMend: whole ? toMendInTrial(whole) : 0 })
}
