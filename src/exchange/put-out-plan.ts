import { saysSame } from '@/core/record/says-same.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Notebook } from '@/notebook/notebook.ts'
import { entryOfPlan } from './packed-plan.ts'
import type { TableStore, Waiting } from './table-store.ts'

/** The plan of a trial where it was changed on this device since `base`, what was last told or put out of it; else undefined. */
export async function changedPlan(
  notebook: Notebook,
  trialId: string,
  base: Plan | undefined,
): Promise<Plan | undefined> {
  const plan = base && (await notebook.planMadeHere(trialId))
  return plan && !saysSame(plan, base) ? plan : undefined
}

/**
 * Puts a changed plan out. One that was put out before and was not sent yet is left out for it: the newest is what counts, with what
 * the first of them began from.
 */
export async function putOutPlan(
  store: TableStore,
  table: string,
  plan: Plan,
  whole: WholeTrial,
): Promise<void> {
  await store.transaction('rw', store.joined, store.waiting, async () => {
    const joined = await store.joined.get(table)
    if (!joined?.planBase) return
    const last = (await store.waiting.where({ table }).sortBy('count')).at(-1)
    const unsent =
      last?.eventId === plan.id && last.sentAt === null && !last.going ? last : undefined
    const base = unsent?.planBase ?? joined.planBase
    const count = unsent?.count ?? joined.written + 1
    const text = JSON.stringify(entryOfPlan({ plan, base }, whole))
    const row: Waiting = { table, count, eventId: plan.id, text, sentAt: null, planBase: base }
    await store.waiting.put(row)
    await store.joined.update(table, {
      written: Math.max(joined.written, count),
      planBase: plan,
    })
  })
}
