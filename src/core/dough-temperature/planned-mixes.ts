import { moistureIn } from '@/core/kitchen/flour-moisture.ts'
import type { KitchenThing, Mixer } from '@/core/kitchen/kitchen-record.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'
import { restInMixSeconds } from './autolyse-of-plan.ts'
import { activeDryGrams } from './bloom-water.ts'
import { doughCelsius, waterCelsius } from './heat-balance.ts'
import { type MixBodies, mixBodies } from './heat-part.ts'
import type { LearnedWork } from './learn-mixing-work.ts'
import { type MixingWork, mixerOfPlan, mixingWork } from './mixing-work.ts'
import { afterRest, beforeRest, restShare } from './rested.ts'
import { leavenOf, type WaterLimits, waterLimits } from './water-limits.ts'

/** One planned dough at its mix. */
export interface PlannedMix {
  level: Level | null
  bodies: MixBodies
  work: MixingWork
  limits: WaterLimits
  activeDryGrams: number
  /** Share of the difference to the room that an autolyse, or a rest between two mixes, leaves; 1 without one. */
  restShare: number
  /** Water that brings it to the wanted temperature; null where the mix takes no water as such. */
  water: number | null
}

/** Every planned dough at its mix, with the water that brings it to the wanted temperature. None without temperatures. */
export function plannedMixes(
  plan: Plan,
  kitchen: readonly KitchenThing[],
  learned: LearnedWork | null,
): PlannedMix[] {
  const { temperature } = plan
  if (!temperature) return []
  const mixer = mixerOfPlan(plan, kitchen)
  const { flourCelsius, roomCelsius } = temperature
  const moistureOf = moistureIn(kitchen)
  return plannedBatches(plan).flatMap((batch): PlannedMix[] => {
    if (!batch.ok) return []
    const work = mixingWork(plan, mixer, learned, batch.level?.value ?? null)
    const { roomHeat } = work
    const at = { flourCelsius, roomCelsius, roomHeat, moistureOf, ...bowlOf(mixer, roomCelsius) }
    const bodies = mixBodies(batch.formula, at)
    const known = {
      ...{ level: batch.level, bodies, work, limits: waterLimits(leavenOf(batch.formula)) },
      activeDryGrams: activeDryGrams(batch.formula),
      restShare: restShare(restInMixSeconds(plan, batch.level), doughGramsOf(bodies)),
    }
    return [{ ...known, water: waterOf(known, temperature.wantedDoughCelsius) }]
  })
}

/** The bowl of a mixer that has one entered, as warm as the room. */
export function bowlOf(mixer: Mixer | null, roomCelsius: number) {
  return mixer?.bowlGrams && mixer.bowlHeat
    ? { bowl: { grams: mixer.bowlGrams, heat: mixer.bowlHeat, celsius: roomCelsius } }
    : {}
}

type Mix = Pick<PlannedMix, 'bodies' | 'work' | 'restShare'>

/** Water that brings a dough to a temperature once it is mixed, an autolyse having cooled (or warmed) it on the way. */
export function waterOf({ bodies, work, restShare: left }: Mix, wanted: number): number | null {
  const first = beforeRest(wanted, bodies.room.celsius, left)
  return waterCelsius(bodies, first, work.kilojoulesPerKilogram)
}

/** Where a dough comes out with a water. */
export function doughOf({ bodies, work, restShare: left }: Mix, water: number): number {
  const first = doughCelsius(bodies, water, work.kilojoulesPerKilogram) ?? water
  return afterRest(first, bodies.room.celsius, left)
}

/** Everything in the bowl but the bowl. */
export function doughGramsOf({ parts, waterGrams }: MixBodies): number {
  return parts.reduce((sum, { what, grams }) => sum + (what === 'bowl' ? 0 : grams), waterGrams)
}
