import { findings } from '@/core/findings/findings.ts'
import { scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'
import { csvOptions, withMainResponse } from './csv-options.ts'
import { csvRefusal } from './csv-refusal.ts'
import type { Found } from './found-shape.ts'
import type { Asked } from './verb.ts'

/** Draws of a table of scores start here, since a table has no seed of its own. */
const seedOfTables = 1

/** The findings of a table of scores. Throws `CommandTrouble` that lists every trouble by row and column. */
export function foundInTable(asked: Asked, text: string, resamples: number | null): Found {
  const read = scoresOfCsv(text, csvOptions(asked))
  if (!read.ok) throw csvRefusal(asked.file, read)
  const scores = withMainResponse(read.scores, asked)
  const document = findings(scores, { seed: seedOfTables, resamples })
  return { scores, findings: document, whole: null }
}
