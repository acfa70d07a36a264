import { waterHeat, wettingHeat } from './heat-constants.ts'
import type { MixBodies } from './heat-part.ts'

/** Heat sums of a mix without its water: kJ/K, kJ (from 0 °C), and kJ given by wetting and by mixing work. */
function sums(bodies: MixBodies, workKilojoulesPerKilogram: number, heatOfWetting: number) {
  const capacity = bodies.parts.reduce((sum, one) => sum + one.kilojoulesPerKelvin, 0)
  const stored = bodies.parts.reduce((sum, one) => sum + one.kilojoulesPerKelvin * one.celsius, 0)
  const wetting = (bodies.dryFlourGrams / 1000) * heatOfWetting
  const work = (bodies.flourGrams / 1000) * workKilojoulesPerKilogram
  const water = (bodies.waterGrams / 1000) * waterHeat
  return { capacity, stored, wetting, work, water }
}

/**
 * Temperature of the dough when the mix takes water of a given temperature: Σ m c T + q_h m_dry + e m_flour over Σ m c.
 * Loss to the room while mixing is not in it. Null for a mix without anything in it.
 */
export function doughCelsius(
  bodies: MixBodies,
  waterCelsius: number,
  workKilojoulesPerKilogram: number,
  heatOfWetting: number = wettingHeat,
): number | null {
  const { capacity, stored, wetting, work, water } = sums(
    bodies,
    workKilojoulesPerKilogram,
    heatOfWetting,
  )
  const all = capacity + water
  return all > 0 ? (stored + water * waterCelsius + wetting + work) / all : null
}

/**
 * Water temperature that brings the dough to the wanted temperature: the same balance solved for the water. Null when the
 * mix takes no water as such.
 */
export function waterCelsius(
  bodies: MixBodies,
  wantedDoughCelsius: number,
  workKilojoulesPerKilogram: number,
  heatOfWetting: number = wettingHeat,
): number | null {
  const { capacity, stored, wetting, work, water } = sums(
    bodies,
    workKilojoulesPerKilogram,
    heatOfWetting,
  )
  if (!(water > 0)) return null
  return (wantedDoughCelsius * (capacity + water) - stored - wetting - work) / water
}

/** Mixing work per kg of flour that explains a measured dough temperature: the same balance solved for e. */
export function workOfMix(
  bodies: MixBodies,
  usedWaterCelsius: number,
  measuredDoughCelsius: number,
): number | null {
  const { capacity, stored, wetting, water } = sums(bodies, 0, wettingHeat)
  if (!(bodies.flourGrams > 0)) return null
  const gained =
    measuredDoughCelsius * (capacity + water) - stored - water * usedWaterCelsius - wetting
  return gained / (bodies.flourGrams / 1000)
}
