/**
 * How long an oven takes to be 1 K hotter, and 1 K cooler, in seconds, where nothing is known of it: 10 K a minute with its
 * heat on, 3 K a minute standing off with its door closed. Our own readings of household ovens vary by half either way; no
 * published source.
 */
export const usualOvenPace = { heatSecondsPerKelvin: 6, coolSecondsPerKelvin: 20 }

export type OvenPace = typeof usualOvenPace

/** Whole seconds that bring the oven from one temperature (°C) to another; none where either is not known. */
export function ovenChangeSeconds(
  from: number | undefined,
  to: number | undefined,
  pace: OvenPace = usualOvenPace,
): number {
  if (from === undefined || to === undefined || from === to) return 0
  const kelvin = to - from
  return Math.ceil(
    kelvin > 0 ? kelvin * pace.heatSecondsPerKelvin : -kelvin * pace.coolSecondsPerKelvin,
  )
}
