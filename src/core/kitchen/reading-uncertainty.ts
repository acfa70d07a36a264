/**
 * Standard uncertainty of a tared reading on a scale of resolution d: two roundings, each rectangular over ± d/2, so
 * d/√6 (JCGM 100:2008, 4.3.7 and F.2.2.1, from memory). Drift and an uneven table are not in it.
 */
export function taredUncertaintyGrams(resolutionGrams: number): number {
  return Math.SQRT2 * untaredUncertaintyGrams(resolutionGrams)
}

/** Standard uncertainty of an untared reading: one rounding, d/√12. */
export function untaredUncertaintyGrams(resolutionGrams: number): number {
  return resolutionGrams / Math.sqrt(12)
}
