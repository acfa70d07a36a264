import type { KitchenThing, Mixer } from '@/core/kitchen/kitchen-record.ts'
import type { MixingWay } from '@/core/kitchen/mixing-way.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type LearnedWork, workAtLevel } from './learn-mixing-work.ts'
import { learnedGiveOrTakeCelsius, mixingHeats } from './mixing-heat.ts'

export interface MixingWork {
  kilojoulesPerKilogram: number
  /** The room's share in the balance, kJ/(K kg of flour). */
  roomHeat: number
  /** Where the work comes from: stated in the plan, learned from the log, the mixer's own, or usual for the way of mixing. */
  from: 'plan' | 'learned' | 'mixer' | 'usual'
  way: MixingWay
  /** Batches a learned value rests on, else 0. */
  batches: number
  /** How far a dough may come out from what the balance says, °C. */
  giveOrTakeCelsius: number
}

/** The mixer a plan uses; null when dough is mixed by hand or none was named. */
export function mixerOfPlan(
  plan: Pick<Plan, 'kitchenIds'>,
  kitchen: readonly KitchenThing[],
): Mixer | null {
  return thingsOfKind(kitchen, 'mixer', plan.kitchenIds)[0] ?? null
}

/** How a plan's doughs are mixed: the plan's word, the mixer's entry, else a stand mixer where a mix uses one, else hands. */
export function mixingWayOf(
  plan: Pick<Plan, 'temperature' | 'steps'>,
  mixer: Mixer | null,
): MixingWay {
  const machine = plan.steps.some(({ kind, uses }) => kind === 'mix' && uses.includes('mixer'))
  return plan.temperature?.mixedBy ?? mixer?.way ?? (machine ? 'stand' : 'hand')
}

/** Mixing work for a level, from the best that is known: the plan's word, then the log, the mixer, what is usual. */
export function mixingWork(
  plan: Pick<Plan, 'temperature' | 'steps'>,
  mixer: Mixer | null,
  learned: LearnedWork | null,
  level: number | null,
): MixingWork {
  const way = mixingWayOf(plan, mixer)
  const { roomHeat, giveOrTakeCelsius, kilojoulesPerKilogram: usual } = mixingHeats[way]
  const known = { way, roomHeat, giveOrTakeCelsius, batches: 0 }
  const stated = plan.temperature?.mixingKilojoulesPerKilogram
  if (stated !== undefined) return { ...known, kilojoulesPerKilogram: stated, from: 'plan' }
  if (learned)
    return {
      ...{ way, from: 'learned', batches: learned.batches },
      kilojoulesPerKilogram: workAtLevel(learned, level),
      roomHeat: roomHeat + learned.roomHeatChange,
      giveOrTakeCelsius: learnedGiveOrTakeCelsius,
    }
  const own = mixer?.workKilojoulesPerKilogram
  if (own !== undefined) return { ...known, kilojoulesPerKilogram: own, from: 'mixer' }
  return { ...known, kilojoulesPerKilogram: usual, from: 'usual' }
}
