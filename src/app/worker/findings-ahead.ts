import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { FindingsAnswer } from './findings-answer.ts'
import { openWorker } from './open-worker.ts'
import type { Ahead } from './use-answer.ts'

/** By the trial as it was read: a trial in which anything changed is another object and has no answer here. */
const ahead = new WeakMap<WholeTrial, Ahead<FindingsAnswer | null>>()

/**
 * Works the findings of a trial out before anybody asks, off the screen; once for each state of the trial. One that fails is
 * forgotten, so that whoever asks works it out and hears of the failure.
 */
export function workOutAhead(whole: WholeTrial): void {
  if (ahead.has(whole)) return
  const worker = openWorker('findings')
  const coming = worker.service.findings({ of: { whole }, weights: null }).finally(worker.end)
  const entry: Ahead<FindingsAnswer | null> = { coming, answer: null }
  ahead.set(whole, entry)
  coming.then(
    (answer) => {
      entry.answer = answer
    },
    () => ahead.delete(whole),
  )
}

/** The findings of a trial that were worked out ahead: there already, on their way, or null where nobody began. */
export const findingsAhead = (whole: WholeTrial): Ahead<FindingsAnswer | null> | null =>
  ahead.get(whole) ?? null
