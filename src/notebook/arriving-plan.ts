import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** A plan as another device changed it, to which it was handed. */
export interface ArrivingPlan {
  plan: Plan
  /** The plan that it was changed from. */
  base: Plan
  /** The things of the kitchen that it names; those that are not known here come in with it. */
  things: readonly KitchenThing[]
}

export type TookPlan =
  | { ok: true }
  /** `plan-moved`: a field was changed here since; that one stands, the others came in. `locked`: it changes what is locked. */
  | { ok: false; reason: 'plan-moved' | 'locked' | 'does-not-fit' }
