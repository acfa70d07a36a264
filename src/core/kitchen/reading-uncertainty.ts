/**
 * Standard uncertainty of a tared reading on a scale of resolution d: two roundings, each rectangular over ± d/2, so
 * d/√6 (JCGM 100:2008, 4.3.7 and F.2.2.1, from memory). A scale's own error is not in it (`scaleErrorGrams`).
 */
export function taredUncertaintyGrams(resolutionGrams: number): number {
  return Math.SQRT2 * untaredUncertaintyGrams(resolutionGrams)
}

/** Standard uncertainty of an untared reading: one rounding, d/√12. */
export function untaredUncertaintyGrams(resolutionGrams: number): number {
  return resolutionGrams / Math.sqrt(12)
}

/**
 * Standard uncertainty, in g, from how far a scale may be off beyond its step: plus or minus its stated error, any value within
 * equally likely, so error/√3 (JCGM 100:2008, 4.3.7, from memory); the fixed part and the part in proportion in quadrature. The
 * same scale is off alike for every batch, so it moves all levels together.
 */
export function scaleErrorGrams(scale: ScaleError, grams: number): number {
  return Math.hypot(fixedErrorGrams(scale), gainError(scale) * grams)
}

type ScaleError = { errorGrams?: number; errorPercent?: number }

/** Standard uncertainty of a scale's fixed error, in g. */
export function fixedErrorGrams({ errorGrams = 0 }: ScaleError): number {
  return errorGrams / Math.sqrt(3)
}

/** Standard uncertainty of a scale's error in proportion, as a share of the weight. */
export function gainError({ errorPercent = 0 }: ScaleError): number {
  return errorPercent / 100 / Math.sqrt(3)
}
