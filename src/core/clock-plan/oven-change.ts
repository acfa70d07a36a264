import { type OvenPace, usualOvenPace } from '@/core/kitchen/oven-times.ts'

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
