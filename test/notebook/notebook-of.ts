import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
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

/** The trial of the tests while its codes are kept: two servings out, two tasters come, their ballots taken. */
export function trialAtTheTable(): WholeTrial {
  const whole = wholeTrialOf()
  return { ...whole, events: whole.events.filter(({ count }) => count <= 23) }
}

/** A notebook that holds the whole trial of the tests, or another. */
export async function notebookWithTrial(
  name = freshName(),
  whole = wholeTrialOf(),
): Promise<OpenNotebook> {
  const notebook = notebookOf(name)
  const outcome = await notebook.importTrial(writeTrialFile(whole))
  if (!outcome.ok) throw new Error(JSON.stringify(outcome))
  return notebook
}

/** A notebook that holds the trial of the tests while its tasting goes on. */
export const notebookAtTheTable = (name = freshName()) => notebookWithTrial(name, trialAtTheTable())

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
