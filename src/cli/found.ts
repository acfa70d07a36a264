import type { Found } from './found-shape.ts'
import { readText } from './read-text.ts'
import type { Asked } from './verb.ts'

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
