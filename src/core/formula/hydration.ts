import type { Formula, Ingredient } from './formula-record.ts'
import { flourPercent, kindPercent } from './totals.ts'

/**
 * Hydration: all water as such, preferments' included, per 100 g of total flour. Milk, egg, honey and the like do not
 * count here: see `waterFromEverythingPercent`. Null without flour.
 */
export function hydrationPercent(formula: Formula): number | null {
  const flour = flourPercent(formula)
  return flour > 0 ? (kindPercent(formula, 'water') / flour) * 100 : null
}

/**
 * Water from everything per 100 g of total flour: water as such plus the water inside every other ingredient. The flour's
 * own moisture is never counted: hydration is by convention on flour as it comes from the bag. Null without flour.
 */
export function waterFromEverythingPercent(formula: Formula): number | null {
  const flour = flourPercent(formula)
  if (!(flour > 0)) return null
  const water = formula.ingredients.reduce((sum, one) => sum + one.percent * waterShare(one), 0)
  return (water / flour) * 100
}

/** The share of an ingredient that is water, 0 to 1: all of water, none of flour (by convention), else as stated. */
function waterShare(ingredient: Pick<Ingredient, 'kind' | 'waterPercent'>): number {
  if (ingredient.kind === 'water') return 1
  if (ingredient.kind === 'flour') return 0
  return (ingredient.waterPercent ?? 0) / 100
}

/** The share of the total flour that ferments or soaks ahead, over all preferments: "prefermented flour". */
export function prefermentedFlourPercent(formula: Formula): number {
  return formula.preferments.reduce((sum, { flourSharePercent }) => sum + flourSharePercent, 0)
}
