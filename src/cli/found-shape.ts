import { toMendInTrial } from '@/core/fairness/fairness-of-trial.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { type NextStep, nextSteps } from '@/core/findings/judged/next-steps.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** Findings from a terminal: of a trial file, or of a table of scores. */
export interface Found {
  scores: ScoreTable
  findings: FindingsDocument
  whole: WholeTrial | null
}

/** What to do next after the findings; a table of scores has no fairness items to mend first. */
export function nextOf({ findings, whole }: Found): NextStep[] {
  return nextSteps(findings, { toMend: whole ? toMendInTrial(whole) : 0 })
}
