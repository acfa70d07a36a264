import { findings, usualResamples } from '@/core/findings/findings.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import type { ScoreTable } from '@/core/findings/score-table.ts'
import { scoresOfCsv } from '@/core/findings/scores-of-csv.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { csvOptions, refuseTableOptions } from './csv-options.ts'
import { csvRefusal } from './csv-refusal.ts'
import { readText } from './read-text.ts'
import { stillSealed, trialInText } from './read-trial.ts'
import type { Asked } from './verb.ts'

/** Findings from a terminal: of a trial file, or of a table of scores. */
export interface Found {
  scores: ScoreTable
  findings: FindingsDocument
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
  return { scores: answer.scores, findings: answer.document, whole }
}

function foundInTable(asked: Asked, text: string): Found {
  const read = scoresOfCsv(text, csvOptions(asked))
  if (!read.ok) throw csvRefusal(asked.file, read)
  const document = findings(read.scores, { seed: seedOfTables, resamples: usualResamples })
  return { scores: read.scores, findings: document, whole: null }
}
