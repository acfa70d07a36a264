import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { readText } from './read-text.ts'
import type { Asked } from './verb.ts'

/** Findings from a terminal: of a trial file, or of a table of scores. */
export interface Found {
  scores: ScoreTable
  findings: FindingsDocument
  whole: WholeTrial | null
}

/**
 * Computes the findings of the file: of a trial when it is named `.json` or holds an object, else of a table of scores.
 * Only what reads that kind of file is loaded. The best is drawn again `resamples` times, null leaves it out: a text does not
 * show it.
 */
export async function found(asked: Asked, resamples: number | null): Promise<Found> {
  const text = readText(asked.file)
  const isTrial = /\.json$/i.test(asked.file) || /^\ufeff?\s*\{/.test(text)
  if (isTrial) return (await import('./found-in-trial.ts')).foundInTrial(asked, text, resamples)
  return (await import('./found-in-table.ts')).foundInTable(asked, text, resamples)
}
