import type { FittedPoint } from '@/core/figure/chart-of-response.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import type { NextStep } from '@/core/findings/judged/next-steps.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'

/** What the worker sends back: the scores, everything found in them, and curves to draw, in the order of the responses. */
export interface FindingsAnswer {
  /** The trial that was asked about, as it stood then; null where a table was. */
  asOf: { trialId: string; revision: number } | null
  scores: ScoreTable
  findings: FindingsDocument
  /** What to do next, the most pressing first. */
  next: NextStep[]
  curves: (FittedPoint[] | null)[]
}
