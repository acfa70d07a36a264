import { toMendInTrial } from '@/core/fairness/fairness-of-trial.ts'
import { type Conclusion, conclusionOf } from '@/core/findings/judged/conclusion.ts'
import type { Found } from './found.ts'

/** What follows from the findings; a table of scores has no fairness items to mend first. */
export function concluded({ scores, findings, whole }: Found): Conclusion {
  return conclusionOf(findings, scores, { toMend: whole ? toMendInTrial(whole) : 0 })
}
