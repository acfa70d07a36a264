import { useEffect, useState } from 'react'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { FindingsAnswer } from './findings-answer.ts'
import { startFindingsWorker } from './findings-worker-client.ts'

export type FindingsState =
  | { state: 'working' }
  | { state: 'answered'; answer: FindingsAnswer; recomputing: boolean }
  | { state: 'failed'; error: Error }

/**
 * The findings of a score table, worked out off the screen. While a change is being computed the last answer stays; a
 * question that is outdated is dropped with its worker.
 */
export function useFindings(
  scores: ScoreTable | null,
  seed: number,
  weights: readonly { response: string; weight: number }[] | null,
  toMend: number,
): FindingsState {
  const [state, setState] = useState<FindingsState>({ state: 'working' })
  useEffect(() => {
    if (!scores) return
    const worker = startFindingsWorker()
    let current = true
    setState((last) => (last.state === 'answered' ? { ...last, recomputing: true } : last))
    worker.service
      .findings({ scores, seed, toMend, ...(weights ? { weights } : {}) })
      .then((answer) => {
        if (current) setState({ state: 'answered', answer, recomputing: false })
      })
      .catch((cause: unknown) => {
        const error = cause instanceof Error ? cause : new Error(String(cause))
        if (current) setState({ state: 'failed', error })
      })
      .finally(() => worker.end())
    return () => {
      current = false
      worker.end()
    }
  }, [scores, seed, weights, toMend])
  return state
}
