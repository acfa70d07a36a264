import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'

/** Water an active dry yeast comes apart in: four times its weight (seen), at this temperature; the rest may be cooler. */
const timesYeast = 4

/** The water of a batch in two: a little for the yeast, the rest so that both together are what the dough asks for. */
export interface BloomWater {
  grams: number
  leastCelsius: number
  mostCelsius: number
  /** Never above this. */
  neverAboveCelsius: number
  /** The rest of the water, with the bloom water taken at the middle of its range; null where there is none left. */
  restCelsius: number | null
}

/** Active dry yeast of a batch that goes into the final dough, grams. */
export function activeDryGrams(formula: Formula): number {
  const { rows } = formulaViews(formula).finalDough
  return formula.ingredients.reduce((sum, { kind, yeastForm }, index) => {
    const isActiveDry = kind === 'yeast' && yeastForm === 'active-dry'
    return sum + (isActiveDry ? Math.max(0, rows[index]?.grams ?? 0) : 0)
  }, 0)
}

/**
 * Active dry yeast's warm water (35 to 43 °C, up to 46 on packets; seen) is its own bloom water, four times its weight, and
 * never the whole dough's. Taken off the batch's water, it leaves the rest at (W T − w T_bloom)/(W − w).
 */
export function bloomWater(
  yeastGrams: number,
  waterGrams: number,
  waterCelsius: number,
): BloomWater | null {
  if (!(yeastGrams > 0)) return null
  const grams = Math.min(waterGrams, timesYeast * yeastGrams)
  const rest = waterGrams - grams
  const [leastCelsius, mostCelsius] = [35, 43]
  const middle = (leastCelsius + mostCelsius) / 2
  const restCelsius = rest > 0 ? (waterGrams * waterCelsius - grams * middle) / rest : null
  return { grams, leastCelsius, mostCelsius, neverAboveCelsius: 46, restCelsius }
}
