import type { Weight } from '@/core/findings/judged/trade-off.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { findings } from './findings.ts'
import type { FindingsDocument } from './findings-document.ts'

export interface TrialFindingsOptions {
  /** Computes although codes are sealed: the one who asks knows of the look. */
  unsealed: boolean
  /** How many resamples the bootstrap draws; null leaves it out. */
  resamples: number | null
  weights?: readonly Weight[]
}

export type TrialFindings =
  | { ok: true; document: FindingsDocument; scores: ScoreTable }
  | { ok: false; reason: 'still-sealed' }

/** The findings of a trial with the scores they stand on; draws start from the trial's own seed. Refused while sealed. */
export function trialFindings(whole: WholeTrial, options: TrialFindingsOptions): TrialFindings {
  const read = scoresOfTrial(whole, { unsealed: options.unsealed })
  if (!read.ok) return read
  const { seed } = whole.trial
  const { resamples, weights } = options
  const document = findings(read.scores, { seed, resamples, ...(weights ? { weights } : {}) })
  return { ok: true, document, scores: read.scores }
}
