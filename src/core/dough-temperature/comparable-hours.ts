import { rateAgainstReference } from './cardinal-temperature.ts'

/** A dough's temperature at a time: seconds from any start the readings share. */
export interface TemperatureReading {
  seconds: number
  celsius: number
}

export type ComparableHours =
  | { ok: true; hours: number; elapsedHours: number }
  | { ok: false; reason: 'needs-two-readings' }
  | { ok: false; reason: 'not-in-order' }
  | { ok: false; reason: 'below-ten-degrees'; elapsedHours: number; coldestCelsius: number }

/** Below this the assumed minimum decides the answer. */
export const coldestComparable = 10
const pieces = 16

/**
 * Hours at 24 °C that a ferment amounts to: ∫ γ(T)/γ(24) dt over the readings, straight lines between them, Simpson's rule
 * on each. For comparing batches of one trial, never for predicting when a dough is ready. Below 10 °C it refuses: there
 * the elapsed hours and the core temperature are all that is known. No such curve is offered for sourdough.
 */
export function comparableHours(readings: readonly TemperatureReading[]): ComparableHours {
  const [first] = readings
  const last = readings.at(-1)
  if (!first || !last || readings.length < 2) return { ok: false, reason: 'needs-two-readings' }
  const steps = readings
    .slice(1)
    .map((reading, index) => ({ from: readings[index] ?? reading, to: reading }))
  if (steps.some(({ from, to }) => to.seconds < from.seconds))
    return { ok: false, reason: 'not-in-order' }
  const elapsedHours = (last.seconds - first.seconds) / 3600
  const coldestCelsius = Math.min(...readings.map(({ celsius }) => celsius))
  if (coldestCelsius < coldestComparable) {
    return { ok: false, reason: 'below-ten-degrees', elapsedHours, coldestCelsius }
  }
  const hours = steps.reduce(
    (sum, { from, to }) =>
      sum + ((to.seconds - from.seconds) / 3600) * meanRate(from.celsius, to.celsius),
    0,
  )
  return { ok: true, hours, elapsedHours }
}

function meanRate(fromCelsius: number, toCelsius: number): number {
  if (fromCelsius === toCelsius) return rateAgainstReference(fromCelsius)
  let sum = 0
  for (let index = 0; index <= pieces; index += 1) {
    const weight = index === 0 || index === pieces ? 1 : index % 2 === 1 ? 4 : 2
    sum += weight * rateAgainstReference(fromCelsius + ((toCelsius - fromCelsius) * index) / pieces)
  }
  return sum / (3 * pieces)
}
