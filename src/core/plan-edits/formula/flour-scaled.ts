import type { Formula } from '@/core/formula/formula-record.ts'
import { flourPercent } from '@/core/formula/totals.ts'

/** The formula with its flours scaled so that they make 100 %; without any flour, as it is. */
export function flourScaled(formula: Formula): Formula {
  const share = flourPercent(formula) / 100
  if (!(share > 0)) return formula
  return {
    ...formula,
    ingredients: formula.ingredients.map((each) =>
      each.kind === 'flour' ? { ...each, percent: each.percent / share } : each,
    ),
  }
}
