import { type KitchenThing, kitchenThingShape } from '@/core/kitchen/kitchen-record.ts'
import { mergePlans } from '@/core/trial/merge-plans.ts'
import { type Plan, planShape } from '@/core/trial/plan-record.ts'
import type { ArrivingPlan, TookPlan } from './arriving-plan.ts'
import { checked } from './checked.ts'
import { keepPlan } from './keep-plan.ts'
import { NotebookFailure } from './notebook-failure.ts'
import { closeOpen, isOpen } from './open-plan.ts'
import type { NotebookServices } from './services.ts'
import type { Store } from './store.ts'

/**
 * Takes a plan in that was changed on another device, field by field against what it began from: what was changed here since
 * stands. It keeps the id that it has there, so that both devices hold the same revision; a revision that is in use stays as it is,
 * as with every change of a plan.
 */
export async function takePlan(
  store: Store,
  services: NotebookServices,
  trialId: string,
  arriving: ArrivingPlan,
): Promise<TookPlan> {
  try {
    return await store.transaction('rw', store.tables, async (): Promise<TookPlan> => {
      const [plan, base] = [checked(planShape, arriving.plan), checked(planShape, arriving.base)]
      const trial = await store.trials.get(trialId)
      const head = trial && (await store.plans.get(trial.planId))
      const known = await store.plans.get(plan.id)
      const ofTrial = [plan, base, ...(known ? [known] : [])].every(
        (each) => each.trialId === trialId,
      )
      if (!head || !ofTrial) return { ok: false, reason: 'does-not-fit' }
      await addThings(store, arriving.things)
      const { plan: together, conflicts } = mergePlans(base, plan, head)
      // What stands here is with the other device too: the change becomes a revision of its own, under its own id.
      if (!known) await closeOpen(store, trialId)
      const given = { now: () => plan.at, zone: plan.zone }
      const newId = known ? services.newId : () => plan.id
      await keepPlan(store, { ...services, ...given, newId }, { ...together, id: head.id })
      return conflicts.length === 0 ? { ok: true } : { ok: false, reason: 'plan-moved' }
    })
  } catch (failure) {
    if (!(failure instanceof NotebookFailure)) throw failure
    if (failure.reason === 'locked') return { ok: false, reason: 'locked' }
    if (failure.reason === 'refused-record') return { ok: false, reason: 'does-not-fit' }
    throw failure
  }
}

async function addThings(store: Store, things: readonly KitchenThing[]): Promise<void> {
  const here = new Set(await store.kitchen.toCollection().primaryKeys())
  const fresh = things.filter(({ id }) => !here.has(id))
  await store.kitchen.bulkAdd(fresh.map((thing) => checked(kitchenThingShape, thing)))
}

/** The plan in force where this device made it and no copy has said otherwise of it since; else undefined. */
export async function planMadeHere(store: Store, trialId: string): Promise<Plan | undefined> {
  return await store.transaction('r', store.trials, store.plans, store.drafts, async () => {
    const trial = await store.trials.get(trialId)
    const head = trial && (await store.plans.get(trial.planId))
    return head && (await isOpen(store, head)) ? head : undefined
  })
}
