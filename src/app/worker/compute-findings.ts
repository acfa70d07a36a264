import { toMendInTrial } from '@/core/fairness/fairness-of-trial.ts'
import { findings } from '@/core/findings/findings.ts'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import type { Weight } from '@/core/findings/judged/trade-off.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { curvesOf } from '@/core/report/curves-of.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { FindingsAnswer } from './findings-answer.ts'

export interface FindingsQuestion {
  scores: ScoreTable
  seed: number
  /** Weights of the responses for the trade-off; those not named weigh 1. */
  weights?: readonly Weight[]
  /** The trial they are of, whose fairness items are to be mended first; null for a table from elsewhere. */
  whole: WholeTrial | null
}

/** Everything but the re-drawing, in one go: fast enough to follow every change. */
export function computeFindings({
  scores,
  seed,
  weights,
  whole,
}: FindingsQuestion): FindingsAnswer {
  const found = findings(scores, {
    seed,
    resamples: null,
    ...(weights === undefined ? {} : { weights }),
  })
  return {
    scores,
    findings: found,
    next: nextSteps(found, { toMend: whole ? toMendInTrial(whole) : 0 }),
    curves: curvesOf(scores, found),
  }
}
