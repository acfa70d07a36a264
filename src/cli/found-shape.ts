import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** Findings from a terminal: of a trial file, or of a table of scores. */
export interface Found {
  scores: ScoreTable
  findings: FindingsDocument
  whole: WholeTrial | null
}
