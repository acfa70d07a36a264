import * as Comlink from 'comlink'
import { bootstrapOfBest } from '@/core/findings/best/bootstrap-of-best.ts'
import { type PooledAnswer, pooledTrials } from '@/core/findings/pooled/pooled-trials.ts'
import type { Absent } from '@/core/findings/reason.ts'
import type { Bootstrap } from '@/core/findings/response-findings-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { computeFindings, type FindingsQuestion } from './compute-findings.ts'
import type { FindingsAnswer } from './findings-answer.ts'

const service = {
  /** All findings without the re-drawing; null of a trial that gives no scores yet. */
  findings(question: FindingsQuestion): FindingsAnswer | null {
    return computeFindings(question)
  },
  /** Several trials of one factor as one answer, or why they are none. Never looks under a seal. */
  together(trials: WholeTrial[]): PooledAnswer {
    return pooledTrials(trials, { unsealed: false })
  },
  /** The re-drawn best of one response; progress from 0 to 1. Stopped by ending the worker. */
  bootstrap(
    scores: ScoreTable,
    responseIndex: number,
    options: { seed: number; resamples: number },
    onProgress: (share: number) => void,
  ): Bootstrap | Absent {
    return bootstrapOfBest(scores, responseIndex, {
      ...options,
      onProgress: (share) => {
        onProgress(share)
        return true
      },
    })
  },
}

export type FindingsService = typeof service

Comlink.expose(service)
