import { useMemo } from 'react'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { FindingsQuestion } from './compute-findings.ts'
import type { FindingsAnswer } from './findings-answer.ts'
import { type Asked, useAnswer } from './use-answer.ts'

/** The findings of a score table, worked out off the screen; the last answer stays while a change is worked out. */
export function useFindings(
  scores: ScoreTable,
  seed: number,
  weights: FindingsQuestion['weights'] | null,
  whole: FindingsQuestion['whole'],
): Asked<FindingsAnswer> {
  const question = useMemo(
    (): FindingsQuestion => ({ scores, seed, whole, ...(weights ? { weights } : {}) }),
    [scores, seed, weights, whole],
  )
  return useAnswer('findings', question, (service, asked) => service.findings(asked))
}
