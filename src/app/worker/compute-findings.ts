import { toMendInTrial } from '@/core/fairness/fairness-of-trial.ts'
import { findings } from '@/core/findings/findings.ts'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import type { Weight } from '@/core/findings/judged/trade-off.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { curvesOf } from '@/core/report/curves-of.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { FindingsAnswer } from './findings-answer.ts'

/** What findings are asked of: a trial, or a table from elsewhere with what its draws start from. */
export type FindingsOf = { whole: WholeTrial } | { scores: ScoreTable; seed: number }

export interface FindingsQuestion {
  of: FindingsOf
  /** Weights of the responses for the trade-off; those not named weigh 1, and null weighs all alike. */
  weights: readonly Weight[] | null
}

/**
 * Everything but the re-drawing, in one go: fast enough to follow every change. Null of a trial that gives no scores: it is
 * sealed, or nothing was scored or measured yet.
 */
export function computeFindings({ of, weights }: FindingsQuestion): FindingsAnswer | null {
  if (!('whole' in of)) return answerOfScores({ ...of, weights, toMend: 0, asOf: null })
  const { whole } = of
  const scored = scoresOfTrial(whole, { unsealed: false })
  if (!scored.ok || scored.scores.rows.length === 0) return null
  return answerOfScores({
    ...{ scores: scored.scores, seed: whole.trial.seed, weights },
    toMend: toMendInTrial(whole),
    asOf: { trialId: whole.trial.id, revision: whole.trial.revision },
  })
}

interface ScoresAsked {
  scores: ScoreTable
  seed: number
  weights: FindingsQuestion['weights']
  /** How many fairness items of the trial are to be mended first. */
  toMend: number
  asOf: FindingsAnswer['asOf']
}

/** The same of scores at hand, which may be none. */
export function answerOfScores(asked: ScoresAsked): FindingsAnswer {
  const { scores, seed, weights, toMend, asOf } = asked
  const found = findings(scores, { seed, resamples: null, ...(weights ? { weights } : {}) })
  return {
    asOf,
    scores,
    findings: found,
    next: nextSteps(found, { toMend }),
    curves: curvesOf(scores, found),
  }
}
