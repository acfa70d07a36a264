import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import { toMend } from '@/core/fairness/in-turn.ts'
import { type Conclusion, conclusionOf } from '@/core/findings/conclusion.ts'
import { findings, usualResamples } from '@/core/findings/findings.ts'
import type { ScoreTable } from '@/core/findings/score-table.ts'
import { scoresOfCsv } from '@/core/findings/scores-of-csv.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { curvesOf } from '@/core/report/curves-of.ts'
import { lettersByName } from '@/core/report/letters-of.ts'
import type { FoundScores } from '@/core/report/results-section.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { csvOptions, refuseTableOptions } from './csv-options.ts'
import { csvRefusal } from './csv-refusal.ts'
import { readText } from './read-text.ts'
import { stillSealed, trialInText } from './read-trial.ts'
import type { Asked } from './verb.ts'

/** Findings from a terminal: of a trial file, or of a table of scores. */
export interface Found extends FoundScores {
  conclusion: Conclusion
  whole: WholeTrial | null
}

/** Draws of a table of scores start here, since a table has no seed of its own. */
const seedOfTables = 1

/** Computes the findings of the file: of a trial when it is named `.json` or holds an object, else of a table of scores. */
export function found(asked: Asked): Found {
  const text = readText(asked.file)
  const isTrial = /\.json$/i.test(asked.file) || /^\ufeff?\s*\{/.test(text)
  return isTrial ? foundInTrial(asked, text) : foundInTable(asked, text)
}

function foundInTrial(asked: Asked, text: string): Found {
  refuseTableOptions(asked)
  const whole = trialInText(asked.file, text)
  const answer = trialFindings(whole, { unsealed: asked.flag('unseal') })
  if (!answer.ok) throw stillSealed(asked.file)
  return withConclusion(answer.scores, answer.document, whole)
}

function foundInTable(asked: Asked, text: string): Found {
  const read = scoresOfCsv(text, csvOptions(asked))
  if (!read.ok) throw csvRefusal(asked.file, read)
  const document = findings(read.scores, { seed: seedOfTables, resamples: usualResamples })
  return withConclusion(read.scores, document, null)
}

function withConclusion(
  scores: ScoreTable,
  document: FoundScores['findings'],
  whole: WholeTrial | null,
): Found {
  return {
    scores,
    findings: document,
    curves: curvesOf(scores, document),
    letters: whole ? lettersByName(whole) : new Map(),
    conclusion: conclusionOf(document, scores, {
      toMend: whole ? toMend(fairnessOfTrial(whole)) : 0,
    }),
    whole,
  }
}
