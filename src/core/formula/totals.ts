import type { Formula, IngredientKind } from './formula-record.ts'

/** Sum of all percents of a formula: the trade's total formula percent, above 100. */
export function totalPercent(formula: Formula): number {
  return formula.ingredients.reduce((sum, { percent }) => sum + percent, 0)
}

/** Sum of the percents of one kind of ingredient. */
export function kindPercent(formula: Formula, kind: IngredientKind): number {
  return formula.ingredients.reduce((sum, one) => sum + (one.kind === kind ? one.percent : 0), 0)
}

/** Sum of the flours' percents: 100 in a sound formula. */
export function flourPercent(formula: Formula): number {
  return kindPercent(formula, 'flour')
}
