import { findings } from '@/core/findings/findings.ts'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import type { Weight } from '@/core/findings/judged/trade-off.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { curvesOf } from '@/core/report/curves-of.ts'
import type { FindingsAnswer } from './findings-answer.ts'

export interface FindingsQuestion {
  scores: ScoreTable
  seed: number
  /** Weights of the responses for the trade-off; those not named weigh 1. */
  weights?: readonly Weight[]
  /** How many fairness items are to be mended first. */
  toMend: number
}

/** Everything but the re-drawing, in one go: fast enough to follow every change. */
export function computeFindings({
  scores,
  seed,
  weights,
  toMend,
}: FindingsQuestion): FindingsAnswer {
  const found = findings(scores, {
    seed,
    resamples: null,
    ...(weights === undefined ? {} : { weights }),
  })
  return {
    scores,
    findings: found,
    next: nextSteps(found, { toMend }),
    curves: curvesOf(scores, found),
  }
}
