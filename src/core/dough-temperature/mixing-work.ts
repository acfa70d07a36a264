import type { KitchenThing, Mixer } from '@/core/kitchen/kitchen-record.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { defaultWork } from './heat-constants.ts'
import { type LearnedWork, workAtLevel } from './learn-mixing-work.ts'

export interface MixingWork {
  kilojoulesPerKilogram: number
  /** Where it comes from: stated in the plan, learned from the log, the mixer's own, or the stated default. */
  from: 'plan' | 'learned' | 'mixer' | 'default-hand' | 'default-machine'
  /** Batches a learned value rests on, else 0. */
  batches: number
}

/** The mixer a plan uses; null when dough is mixed by hand or none was named. */
export function mixerOfPlan(
  plan: Pick<Plan, 'kitchenIds'>,
  kitchen: readonly KitchenThing[],
): Mixer | null {
  return thingsOfKind(kitchen, 'mixer', plan.kitchenIds)[0] ?? null
}

/** Mixing work for a level, from the best that is known: the plan's word, then the log, the mixer, the stated default. */
export function mixingWork(
  plan: Pick<Plan, 'temperature' | 'steps'>,
  mixer: Mixer | null,
  learned: LearnedWork | null,
  level: number | null,
): MixingWork {
  const stated = plan.temperature?.mixingKilojoulesPerKilogram
  if (stated !== undefined) return { kilojoulesPerKilogram: stated, from: 'plan', batches: 0 }
  if (learned) {
    const kilojoulesPerKilogram = workAtLevel(learned, level)
    return { kilojoulesPerKilogram, from: 'learned', batches: learned.batches }
  }
  const own = mixer?.workKilojoulesPerKilogram
  if (own !== undefined) return { kilojoulesPerKilogram: own, from: 'mixer', batches: 0 }
  const machine = plan.steps.some(({ kind, uses }) => kind === 'mix' && uses.includes('mixer'))
  return machine
    ? { kilojoulesPerKilogram: defaultWork.machine, from: 'default-machine', batches: 0 }
    : { kilojoulesPerKilogram: defaultWork.hand, from: 'default-hand', batches: 0 }
}
