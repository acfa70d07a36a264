/** Flour's moisture where nobody knows it, %: bread flours stand between 12.5 and 14 (trade sheets seen). */
export const usualMoisturePercent = 13.5

/** Moistures that flour is sold at, %: outside these the curve is not asked. */
const driest = 8
const dampest = 15.5

/**
 * Heat that flour gives when it is wetted, kJ per kg of flour as it is: q = 100·exp(−13.6·m)·(1 − M/100) with m = M/(100 − M)
 * and M the moisture in %. The curve goes through 15.1 at 11.5 % (6.5 BTU/lb at 11 to 12 %, seen in a trade dictionary) and 100
 * for bone-dry flour (Winkler & Geddes 1931, from memory); good to a quarter. A moisture past 8 to 15.5 % counts as that end.
 */
export function wettingHeat(moisturePercent: number = usualMoisturePercent): number {
  const moisture = Math.min(dampest, Math.max(driest, moisturePercent))
  return 100 * Math.exp((-13.6 * moisture) / (100 - moisture)) * (1 - moisture / 100)
}
