/**
 * Flour and water inside a mass of ripe starter of a known hydration: flour = S / (1 + h), water = S h / (1 + h),
 * h = hydration / 100. Exact identity; what a starter loses as gas is not counted.
 */
export function splitStarter(
  starterGrams: number,
  starterHydrationPercent: number,
): { flourGrams: number; waterGrams: number } {
  const hydration = starterHydrationPercent / 100
  const flourGrams = starterGrams / (1 + hydration)
  return { flourGrams, waterGrams: starterGrams - flourGrams }
}

/**
 * Hydration of a dough whose final mix takes flour, water and a starter: (W + S h/(1 + h)) / (F + S/(1 + h)) × 100.
 * Adding more starter to the same flour and water pulls the dough towards the starter's own hydration: a trial of the
 * starter's share at other than the dough's hydration changes hydration too. Null without flour.
 */
export function hydrationWithStarter(
  flourGrams: number,
  waterGrams: number,
  starterGrams: number,
  starterHydrationPercent: number,
): number | null {
  const starter = splitStarter(starterGrams, starterHydrationPercent)
  const flour = flourGrams + starter.flourGrams
  return flour > 0 ? ((waterGrams + starter.waterGrams) / flour) * 100 : null
}
