import type { Plan } from '@/core/trial/plan-record.ts'
import type { Store } from './store.ts'

const keyOf = (trialId: string) => `open-plan/${trialId}`

/**
 * Whether a revision is still this notebook's alone: made here, and not yet gone out in a file. Only then may it be changed
 * in place; every revision that others can hold stays as it is, so that two devices always find the one both began from.
 */
export async function isOpen(store: Store, { id, trialId }: Plan): Promise<boolean> {
  return (await store.drafts.get(keyOf(trialId)))?.values.planId === id
}

/** From now on this revision, and no other of the trial, may be changed in place. */
export async function keepOpen(store: Store, { id, trialId }: Plan): Promise<void> {
  await store.drafts.put({ key: keyOf(trialId), values: { planId: id } })
}

/** The trial goes out in a file: no revision of it is changed in place any more. */
export async function closeOpen(store: Store, trialId: string): Promise<void> {
  await store.drafts.delete(keyOf(trialId))
}
