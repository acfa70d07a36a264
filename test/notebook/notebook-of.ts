import { createNotebook } from '@/notebook/create-notebook.ts'
import type { OpenNotebook } from '@/notebook/notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

/** The moment it is in the tests: 9 May 2026, 12:00 UTC. */
export const testNow = Date.UTC(2026, 4, 9, 12)

let names = 0
let ids = 0

/** A name no notebook of this test file has had. */
export const freshName = () => `notebook-${++names}`

/** A notebook with a standing clock, ids that count up and a seed of 7. */
export function notebookOf(name = freshName(), now = () => testNow): OpenNotebook {
  const newId = () => `made-${++ids}`
  return createNotebook(name, { now, zone: 'Europe/Rome', newId, newSeed: () => 7 })
}

/** A notebook that holds the whole trial of the tests. */
export async function notebookWithTrial(name = freshName()): Promise<OpenNotebook> {
  const notebook = notebookOf(name)
  const outcome = await notebook.importTrial(writeTrialFile(wholeTrialOf()))
  if (!outcome.ok) throw new Error(JSON.stringify(outcome))
  return notebook
}

/** Everything a notebook tells of itself: equal before and after whatever leaves it untouched. */
export async function contentOf(notebook: OpenNotebook) {
  const summaries = await notebook.summaries({ archived: true, binned: true })
  const trials = await Promise.all(summaries.map((line) => notebook.wholeTrial(line.trialId)))
  return structuredClone({
    summaries,
    trials,
    kitchen: await notebook.kitchen(),
    settings: await notebook.settings(),
  })
}
