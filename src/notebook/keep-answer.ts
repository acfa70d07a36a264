import { checked } from './checked.ts'
import { renewedTrial } from './renewed-trial.ts'
import type { Store } from './store.ts'
import { summaryOf } from './summary-of.ts'
import { summaryShape } from './summary-record.ts'

/**
 * Writes an answer into the summary of the revision it was found at; any later change of the trial makes its summary anew
 * and so drops it. An answer that comes too late, or for a sealed trial, is not taken; one that stands already is not
 * written again, so that a live query over the home list rests.
 */
export async function keepAnswer(
  store: Store,
  trialId: string,
  revision: number,
  answer: string,
): Promise<void> {
  await store.transaction('rw', store.tables, async () => {
    const trial = await store.trials.get(trialId)
    if (trial?.revision !== revision) return
    const kept = summaryShape.safeParse(await store.summaries.get(trialId))
    if (kept.success && kept.data.revision === revision && kept.data.answer === answer) return
    const whole = await renewedTrial(store, trialId, store.held)
    if (!whole) return
    const summary = summaryOf(whole)
    if (!summary.sealed) await store.summaries.put(checked(summaryShape, { ...summary, answer }))
  })
}
