import { type LearnedWork, learnMixingWork } from '@/core/dough-temperature/learn-mixing-work.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import {
  type FactorScale,
  factorScale,
  loggedMixes,
  type MixedBy,
  mixedByOf,
  type TrialMix,
  type UntoldReason,
} from './logged-mixes.ts'

/** Mixing work of one way to mix, from all trials that used it. */
export type MixerWork = {
  mixedBy: MixedBy
  /** Doughs that told nothing, by reason; only reasons that occurred. */
  untold: { reason: UntoldReason; batches: number }[]
} & (
  | ({
      ok: true
      /** Trials whose doughs it rests on. */
      trialIds: string[]
      /** The factor that the slope is along; null without a slope. */
      factor: FactorScale | null
    } & LearnedWork)
  | { ok: false; reason: 'no-logged-mix' }
)

/**
 * Mixing work in kJ per kg of flour for every mixer, machine or pair of hands that the trials used: mean and spread over all
 * doughs, a slope on the level where the doughs are all of one kind of factor and it stands clear of its own error. Trials that
 * keep their codes are left out.
 */
export function learnedMixingWork(trials: readonly WholeTrial[]): MixerWork[] {
  const doughs = trials.flatMap(loggedMixes)
  const ways = new Map(doughs.map(({ mixedBy }) => [wayKey(mixedBy), mixedBy]))
  return [...ways].map(([way, mixedBy]) =>
    workOfWay(
      mixedBy,
      doughs.filter((one) => wayKey(one.mixedBy) === way),
    ),
  )
}

function workOfWay(mixedBy: MixedBy, doughs: readonly TrialMix[]): MixerWork {
  const told = doughs.filter((one) => one.ok)
  const reasons = doughs.flatMap((one) => (one.ok ? [] : [one.reason]))
  const untold = [...new Set(reasons)].map((reason) => ({
    reason,
    batches: reasons.filter((each) => each === reason).length,
  }))
  const factors = new Set(told.map((one) => one.factor.key))
  const learned = learnMixingWork(
    told.map(({ mix }) => (factors.size === 1 ? mix : { ...mix, level: null })),
  )
  if (!learned.ok) return { mixedBy, untold, ok: false, reason: learned.reason }
  const factor = learned.slope ? (told[0]?.factor ?? null) : null
  const trialIds = [...new Set(told.map(({ trialId }) => trialId))]
  return { mixedBy, untold, ...learned, trialIds, factor }
}

/**
 * What was learned of the way a plan mixes, for its water; its slope only where the plan's factor is of the same kind. Null
 * when nothing was.
 */
export function workForPlan(
  learned: readonly MixerWork[],
  plan: Plan,
  kitchen: readonly KitchenThing[],
): (LearnedWork & { trialIds: string[] }) | null {
  const way = wayKey(mixedByOf(plan, [...kitchen]))
  const work = learned.find(({ mixedBy }) => wayKey(mixedBy) === way)
  if (!work?.ok) return null
  const { kilojoulesPerKilogram, sdKilojoulesPerKilogram, batches, trialIds, roomHeatChange } = work
  const slope = work.factor?.key === factorScale(plan).key ? work.slope : null
  return {
    ...{ kilojoulesPerKilogram, sdKilojoulesPerKilogram, batches, trialIds },
    ...{ roomHeatChange, slope },
  }
}

function wayKey(mixedBy: MixedBy): string {
  return mixedBy.by === 'mixer' ? `mixer/${mixedBy.mixerId}/${mixedBy.way}` : mixedBy.way
}
