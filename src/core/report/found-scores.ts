import type { FittedPoint } from '@/core/figure/chart-of-response.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'

/** What the results of a report are made from; `curves` stand in the order of the responses, null where none is drawn. */
export interface FoundScores {
  scores: ScoreTable
  findings: FindingsDocument
  curves: readonly (readonly FittedPoint[] | null)[]
  /** A taster as the reader knows them. */
  nameOf: (taster: string) => string
  /** Letters of the levels by id, where every session dealt the same; else empty. */
  letters: ReadonlyMap<string, string>
}
