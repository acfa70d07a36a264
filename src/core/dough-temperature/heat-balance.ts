import { waterHeat } from './heat-constants.ts'
import type { MixBodies } from './heat-part.ts'

/** Heat sums of a mix without its water: kJ/K, kJ (from 0 °C), and kJ given by wetting and by mixing work. */
function sums(bodies: MixBodies, workKilojoulesPerKilogram: number) {
  const all = [...bodies.parts, bodies.room]
  const capacity = all.reduce((sum, one) => sum + one.kilojoulesPerKelvin, 0)
  const stored = all.reduce((sum, one) => sum + one.kilojoulesPerKelvin * one.celsius, 0)
  const given = bodies.wettingKilojoules + (bodies.flourGrams / 1000) * workKilojoulesPerKilogram
  return { capacity, stored, given, water: (bodies.waterGrams / 1000) * waterHeat }
}

/**
 * Temperature of the dough when the mix takes water of a given temperature:
 * T = [Σ m c T + q + e F + K F T_room] / [Σ m c + K F], F all flour in kg, q the wetting heat of the flour that is still dry.
 * Null for a mix without anything in it.
 */
export function doughCelsius(
  bodies: MixBodies,
  waterCelsius: number,
  workKilojoulesPerKilogram: number,
): number | null {
  if (!(bodies.parts.length > 0 || bodies.waterGrams > 0)) return null
  const { capacity, stored, given, water } = sums(bodies, workKilojoulesPerKilogram)
  const all = capacity + water
  return all > 0 ? (stored + water * waterCelsius + given) / all : null
}

/**
 * Water temperature that brings the dough to the wanted temperature: the same balance solved for the water. Null when the
 * mix takes no water as such.
 */
export function waterCelsius(
  bodies: MixBodies,
  wantedDoughCelsius: number,
  workKilojoulesPerKilogram: number,
): number | null {
  const { capacity, stored, given, water } = sums(bodies, workKilojoulesPerKilogram)
  if (!(water > 0)) return null
  return (wantedDoughCelsius * (capacity + water) - stored - given) / water
}

/** Mixing work per kg of flour that explains a measured dough temperature: the same balance solved for e. */
export function workOfMix(
  bodies: MixBodies,
  usedWaterCelsius: number,
  measuredDoughCelsius: number,
): number | null {
  const { capacity, stored, given, water } = sums(bodies, 0)
  if (!(bodies.flourGrams > 0)) return null
  const gained =
    measuredDoughCelsius * (capacity + water) - stored - water * usedWaterCelsius - given
  return gained / (bodies.flourGrams / 1000)
}
