/**
 * How long an oven takes to be 1 K hotter, and 1 K cooler, in seconds, where nothing is known of it: 10 K a minute with its
 * heat on, 3 K a minute standing off with its door closed. A stated default; common practice, no source: for a new set point the
 * air takes 10 to 20 minutes, a baking stone 20 to 40 up and 30 to 60 down, so stone and steel want longer than this.
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
