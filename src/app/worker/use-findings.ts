import { useMemo } from 'react'
import type { FindingsOf, FindingsQuestion } from './compute-findings.ts'
import { findingsAhead } from './findings-ahead.ts'
import type { FindingsAnswer } from './findings-answer.ts'
import { type Asked, useAnswer } from './use-answer.ts'

/**
 * The findings of a trial or a table, worked out off the screen; the last answer stays while a change is worked out. An answer
 * of null says that there is nothing to find in yet.
 */
export function useFindings(
  of: FindingsOf,
  weights: FindingsQuestion['weights'],
): Asked<FindingsAnswer | null> {
  const question = useMemo((): FindingsQuestion => ({ of, weights }), [of, weights])
  return useAnswer(
    'findings',
    question,
    (service, asked) => service.findings(asked),
    findingsAskedAhead,
  )
}

/** Weights of the trade-off are chosen on the page, so nothing was worked out ahead for them. */
const findingsAskedAhead = ({ of, weights }: FindingsQuestion) =>
  'whole' in of && weights === null ? findingsAhead(of.whole) : null
