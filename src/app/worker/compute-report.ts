import { toMendInTrial } from '@/core/fairness/fairness-of-trial.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import type { ReportDocument } from '@/core/report/report-block.ts'
import { reportDocument } from '@/core/report/report-document.ts'
import { type Manner, writtenAs } from '@/core/units/manner.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { answerOfScores } from './compute-findings.ts'

export interface ReportQuestion {
  whole: WholeTrial
  /** How the figures are written: a worker knows nothing of what the person chose. */
  manner: Manner
}

/** The report of a trial with the scores it rests on. */
export interface WrittenReport {
  scores: ScoreTable
  document: ReportDocument
}

/** Reads the scores of a trial, finds what they say and writes it up; the hash is that of the trial's file, null where there is none. Never looks under a seal. */
export function computeReport(
  { whole, manner }: ReportQuestion,
  dataSha256: string | null,
): WrittenReport {
  const scored = scoresOfTrial(whole, { unsealed: false })
  if (!scored.ok) throw new Error('no report is asked for while codes are kept')
  const { scores } = scored
  const { findings, next, curves } = answerOfScores({
    ...{ scores, seed: whole.trial.seed, weights: null },
    asOf: null,
    toMend: toMendInTrial(whole),
  })
  const made = writtenAs(manner, () =>
    reportDocument({
      ...{ whole, scores, findings, next, curves, version: __APP_VERSION__ },
      ...(dataSha256 === null ? {} : { dataSha256 }),
      ...{ clock: civilTime, unsealed: false },
    }),
  )
  if (!made.ok) throw new Error('a trial that gives scores gives a report')
  return { scores, document: made.document }
}
