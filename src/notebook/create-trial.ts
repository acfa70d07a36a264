import { type Plan, planShape } from '@/core/trial/plan-record.ts'
import { type Follows, trialShape } from '@/core/trial/trial-record.ts'
import { refuseDangling } from './change-trial.ts'
import { checked } from './checked.ts'
import { NotebookFailure } from './notebook-failure.ts'
import { keepOpen } from './open-plan.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'
import { namedKitchen } from './stored-trial.ts'
import { summaryOf } from './summary-of.ts'
import { summaryShape } from './summary-record.ts'

/** Makes a new trial around its first plan, with a seed of its own; refuses ids that are already here. */
export async function createTrial(
  store: Store,
  { now, zone, newSeed }: NotebookServices,
  plan: Plan,
  { follows, note = '' }: { follows?: Follows; note?: string } = {},
): Promise<string> {
  const first = checked(planShape, { ...plan, revision: 1 })
  const trial = checked(trialShape, {
    ...{ id: first.trialId, createdAt: now(), zone, planId: first.id, seed: newSeed() },
    ...{ revision: 1, note, ...(follows ? { follows } : {}) },
  })
  return await store.transaction('rw', store.tables, async () => {
    if ((await store.trials.get(trial.id)) || (await store.plans.get(first.id)))
      throw new NotebookFailure('refused-record', 'a new trial needs new ids')
    const belonging = { plans: [first], sessions: [], events: [], ballots: [] }
    const kitchen = await namedKitchen(store, belonging)
    const whole = { trial, ...belonging, photos: [], kitchen }
    refuseDangling(whole)
    await store.plans.add(first)
    await store.trials.add(trial)
    await keepOpen(store, first)
    await store.summaries.put(checked(summaryShape, summaryOf(whole)))
    return trial.id
  })
}
