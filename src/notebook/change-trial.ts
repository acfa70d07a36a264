import { Dexie } from 'dexie'
import { trialShape } from '@/core/trial/trial-record.ts'
import { referenceTroubles } from '@/core/whole-trial/reference-troubles.ts'
import type { ReferenceTrouble } from '@/core/whole-trial/references.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { checked, closed } from './checked.ts'
import { NotebookFailure } from './notebook-failure.ts'
import { renewedTrial } from './renewed-trial.ts'
import type { Store } from './store.ts'
import { namedKitchen } from './stored-trial.ts'
import { summaryOf } from './summary-of.ts'
import { summaryShape } from './summary-record.ts'

/** What a change made of a trial: the parts that are different now, and what the caller is told. */
export interface Changed<Told> {
  now: Partial<WholeTrial>
  told: Told
  /** True where nothing that an answer rests on is touched: one kept in the home list stays. */
  answerStands?: boolean
}

/** Refuses a trial in which a record names something that is not there. */
export function refuseDangling(whole: WholeTrial): void {
  refuseReferences(referenceTroubles(whole))
}

/** Throws a failure that names every reference that names nothing; lets an empty list pass. */
export function refuseReferences(found: readonly ReferenceTrouble[]): void {
  const troubles = found.map((each) => ({ reason: 'reference' as const, ...each }))
  if (troubles.length > 0)
    throw new NotebookFailure('refused-record', JSON.stringify(troubles.slice(0, 3)), troubles)
}

/**
 * Changes a trial in one transaction: `change` gets the whole trial as it stands, stores its own records and answers what
 * is different. The result must hold together; then the revision goes up by one and the summary follows. Anything thrown
 * on the way leaves the notebook as it was.
 */
export async function changeTrial<Told>(
  store: Store,
  trialId: string,
  change: (whole: WholeTrial) => Promise<Changed<Told>>,
): Promise<Told> {
  const alone = Dexie.currentTransaction === null
  const done = await store.transaction('rw', store.tables, async () => {
    const before = await renewedTrial(store, trialId, store.held)
    if (!before) throw new NotebookFailure('no-such-trial', trialId)
    const { now, told, answerStands = false } = await change(before)
    const changed = { ...before, ...now }
    const revision = before.trial.revision + 1
    const kitchen = await namedKitchen(store, changed)
    const trial = checked(trialShape, { ...changed.trial, revision })
    const after = closed({ ...changed, trial, kitchen })
    refuseDangling(after)
    await store.trials.put(after.trial)
    const kept = answerStands ? await storedAnswer(store, before) : {}
    await store.summaries.put(checked(summaryShape, { ...summaryOf(after), ...kept }))
    return { told, after }
  })
  // What a transaction around this one may still take back is not held.
  store.held = alone ? done.after : undefined
  return done.told
}

/** The answer that stands in the home list for the trial's present revision, if any. */
async function storedAnswer(store: Store, { trial }: WholeTrial): Promise<{ answer?: string }> {
  const kept = summaryShape.safeParse(await store.summaries.get(trial.id))
  if (!kept.success || kept.data.revision !== trial.revision) return {}
  const { answer } = kept.data
  return answer === undefined ? {} : { answer }
}
