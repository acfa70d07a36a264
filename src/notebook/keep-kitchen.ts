import { type KitchenThing, kitchenThingShape } from '@/core/kitchen/kitchen-record.ts'
import { checked } from './checked.ts'
import { kitchenIdsOf } from './kitchen-of-trial.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { Store } from './store.ts'

/** Keeps a kitchen thing, new or changed. It stays of its kind, and a taster who was erased stays erased. */
export async function keepKitchenThing(store: Store, thing: KitchenThing): Promise<void> {
  const given = checked(kitchenThingShape, thing)
  await store.transaction('rw', store.kitchen, async () => {
    const before = await store.kitchen.get(given.id)
    if (before && before.kind !== given.kind)
      throw new NotebookFailure('refused-record', `${given.id} is a ${before.kind}`)
    if (before?.kind === 'taster' && before.erasedAt !== undefined)
      throw new NotebookFailure('refused-record', 'this taster was erased')
    await store.kitchen.put(given)
  })
}

/** Removes a kitchen thing that no trial names. */
export async function removeKitchenThing(store: Store, id: string): Promise<void> {
  await store.transaction('rw', store.tables, async () => {
    const [plans, sessions, events, ballots] = await Promise.all([
      store.plans.toArray(),
      store.sessions.toArray(),
      store.events.toArray(),
      store.ballots.toArray(),
    ])
    if (kitchenIdsOf({ plans, sessions, events, ballots }).has(id))
      throw new NotebookFailure('in-use', id)
    await store.kitchen.delete(id)
  })
}

/** Empties a taster's initials and note for good. Answers stay, without a name. Nothing happens to one already erased. */
export async function eraseTaster(store: Store, tasterId: string, at: number): Promise<void> {
  await store.transaction('rw', store.kitchen, async () => {
    const taster = await store.kitchen.get(tasterId)
    if (taster?.kind !== 'taster')
      throw new NotebookFailure('refused-record', `${tasterId} is no taster`)
    if (taster.erasedAt !== undefined) return
    await store.kitchen.put({ id: tasterId, kind: 'taster', initials: '', erasedAt: at })
  })
}
