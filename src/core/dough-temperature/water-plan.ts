import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { referenceLevel } from '@/core/trial/reference-level.ts'
import { hasAutolyse } from './autolyse-of-plan.ts'
import { type BloomWater, bloomWater } from './bloom-water.ts'
import { type IceShare, iceShare } from './ice-share.ts'
import type { LearnedWork } from './learn-mixing-work.ts'
import type { MixingWork } from './mixing-work.ts'
import { doughOf, type PlannedMix, plannedMixes } from './planned-mixes.ts'
import { type MinutesEnds, minutesApart, proofMinutes, warmSeconds } from './proof-minutes.ts'
import { frictionFromMeasured, simpleRuleWater } from './simple-rule.ts'
import type { UnwateredDoughs } from './unwatered-doughs.ts'
import { type WarmedInstead, warmedInstead } from './warmed-instead.ts'
import { pastLimits, type WaterLimits } from './water-limits.ts'

export interface BatchWater {
  levelId: string | null
  label: string
  /** Water that brings this batch to the wanted dough temperature; below 0 °C there is none, and only ice would do. */
  waterCelsius: number
  waterGrams: number
  limits: WaterLimits
  /** Degrees outside the limits: below zero colder, above zero hotter than advisable, 0 inside. */
  pastLimitsCelsius: number
  /** Degrees hotter than the tap gives; 0 when it does not have to be heated. Null without a tap. */
  hotterThanTapCelsius: number | null
  /** Ice in place of as much tap water; null when the tap's own range will do, or no tap is known. */
  ice: (IceShare & { grams: number }) | null
  /** Active dry yeast's own water; null without such yeast. */
  bloom: BloomWater | null
  /** Where the water would be too hot: what cold ingredients would do that stood until they were as warm as the room. */
  warmed: WarmedInstead | null
  work: MixingWork
  /** Dough with the reference batch's water for all: the rider. */
  oneWaterDoughCelsius: number
  /** Minutes by which that dough is behind (below zero: ahead) after the planned warm time; null outside 15 to 34 °C. */
  oneWaterProofMinutes: number | null
  /** What the simple rule says, fitted at the reference batch, and how far the dough would come out off by it. */
  simpleRuleCelsius: number
  simpleRuleDoughErrorCelsius: number
}

export interface WaterPlan {
  ok: true
  wantedDoughCelsius: number
  batches: BatchWater[]
  /** One water for all: the reference batch's, never below 0 °C. */
  oneWaterCelsius: number
  /** Largest less smallest dough temperature with one water, and the same in minutes of the planned warm time. */
  spreadCelsius: number
  spreadMinutes: number | null
  /** The same by the slowest and the quickest gassing rate that was seen. */
  spreadMinutesEnds: MinutesEnds | null
  warmSeconds: number
  /** The water goes in at an autolyse: the balance is taken at that first wetting, and the rest cools the dough on its way. */
  firstWetting: 'autolyse' | 'mix'
  /** How far a dough may come out from the wanted temperature, °C: of the batch that is known least. */
  giveOrTakeCelsius: number
}

export type WaterPlanTrouble =
  | { ok: false; reason: 'no-temperatures' | 'no-batch' }
  | UnwateredDoughs

/** Liquid water is never colder; what a dough still lacks then, ice must take. °C. */
export const coldestWaterCelsius = 0

type WateredMix = PlannedMix & { water: number }

/**
 * Water temperature for every batch so that all doughs leave the mixer equally warm, from the heat balance with the room in
 * it; beside it what one water for all would do, in degrees and in minutes of proof, and the trade's simple rule with its
 * error. The bowl counts when the mixer has one, at room temperature. Flour in preferments is wet already and gives no wetting
 * heat; an autolyse drifts to the room before the mix ends. Where
 * some dough takes no water at the mix, how warm the doughs come out all the same.
 */
export function waterPlan(
  plan: Plan,
  kitchen: readonly KitchenThing[],
  learned: LearnedWork | null = null,
): WaterPlan | WaterPlanTrouble {
  const { temperature } = plan
  if (!temperature) return { ok: false, reason: 'no-temperatures' }
  const wanted = temperature.wantedDoughCelsius
  const all = plannedMixes(plan, kitchen, learned)
  const mixes = all.filter((mix): mix is WateredMix => mix.water !== null)
  if (mixes.length < all.length) return unwatered(plan, all, wanted)
  const referenceId = referenceLevel(plan.levels)?.id
  const reference = mixes.find(({ level }) => level?.id === referenceId) ?? mixes[0]
  if (!reference) return { ok: false, reason: 'no-batch' }
  const others = knownTemperatures(plan)
  const friction = frictionFromMeasured(wanted, [...others, reference.water])
  const rule = simpleRuleWater(wanted, others, friction)
  const seconds = warmSeconds(plan.steps)
  const oneWaterCelsius = Math.max(coldestWaterCelsius, reference.water)
  const batches = mixes.map((mix): BatchWater => {
    const oneWater = doughOf(mix, oneWaterCelsius)
    return {
      levelId: mix.level?.id ?? null,
      label: mix.level?.label ?? '',
      waterCelsius: mix.water,
      waterGrams: mix.bodies.waterGrams,
      limits: mix.limits,
      pastLimitsCelsius: pastLimits(mix.water, mix.limits),
      ...fromTap(plan, kitchen, mix),
      bloom: bloomWater(mix.activeDryGrams, mix.bodies.waterGrams, mix.water),
      warmed: warmedInstead(mix, mix.water, wanted),
      work: mix.work,
      oneWaterDoughCelsius: oneWater,
      oneWaterProofMinutes: proofMinutes(seconds, wanted, oneWater),
      simpleRuleCelsius: rule,
      simpleRuleDoughErrorCelsius: doughOf(mix, rule) - wanted,
    }
  })
  const apart = minutesApart(
    seconds,
    wanted,
    batches.map((batch) => batch.oneWaterDoughCelsius),
  )
  return {
    ok: true,
    wantedDoughCelsius: wanted,
    batches,
    oneWaterCelsius,
    spreadCelsius: spread(batches.map((batch) => batch.oneWaterDoughCelsius)),
    ...apart,
    warmSeconds: seconds,
    firstWetting: hasAutolyse(plan) ? 'autolyse' : 'mix',
    giveOrTakeCelsius: Math.max(...mixes.map(({ work }) => work.giveOrTakeCelsius)),
  }
}

function unwatered(plan: Plan, mixes: readonly PlannedMix[], wanted: number): UnwateredDoughs {
  const seconds = warmSeconds(plan.steps)
  const doughs = mixes.map((mix) => ({
    levelId: mix.level?.id ?? null,
    label: mix.level?.label ?? '',
    waterCelsius: mix.water,
    doughCelsius: mix.water === null ? doughOf(mix, 0) : wanted,
  }))
  return {
    ok: false,
    reason: 'no-water-at-mix',
    wantedDoughCelsius: wanted,
    doughs,
    spreadCelsius: spread(doughs.map((dough) => dough.doughCelsius)),
    ...minutesApart(
      seconds,
      wanted,
      doughs.map((dough) => dough.doughCelsius),
    ),
  }
}

/** The temperatures that the simple rule counts beside the water: flour, room, and each preferment. */
function knownTemperatures({ temperature, formula }: Plan): number[] {
  if (!temperature) return []
  const { flourCelsius, roomCelsius } = temperature
  return [
    flourCelsius,
    roomCelsius,
    ...formula.preferments.map(({ celsius }) => celsius ?? roomCelsius),
  ]
}

function fromTap(
  plan: Plan,
  kitchen: readonly KitchenThing[],
  { water, bodies }: WateredMix,
): Pick<BatchWater, 'ice' | 'hotterThanTapCelsius'> {
  const [tap] = thingsOfKind(kitchen, 'tap', plan.kitchenIds)
  if (!tap) return { ice: null, hotterThanTapCelsius: null }
  const hotterThanTapCelsius = Math.max(0, water - tap.warmestCelsius)
  if (water >= tap.coldestCelsius) return { ice: null, hotterThanTapCelsius }
  const [fridge] = thingsOfKind(kitchen, 'fridge', plan.kitchenIds)
  const ice = iceShare(tap.coldestCelsius, water, fridge?.freezerCelsius ?? 0)
  return {
    ice: { ...ice, grams: ice.ok ? ice.share * bodies.waterGrams : 0 },
    hotterThanTapCelsius,
  }
}

function spread(values: readonly number[]): number {
  return values.length > 0 ? Math.max(...values) - Math.min(...values) : 0
}
