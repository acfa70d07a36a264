import type { Formula, Ingredient } from '@/core/formula/formula-record.ts'

/** A small plain dough to vary in tests: 100 flour, 70 water, 2 salt, 0.4 instant yeast on 1,000 g flour. */
export function plainFormula(change: Partial<Formula> = {}): Formula {
  return {
    ingredients: [
      ingredient('flour', 'flour', 100),
      ingredient('water', 'water', 70),
      ingredient('salt', 'salt', 2),
      { ...ingredient('yeast', 'yeast', 0.4), yeastForm: 'instant' },
    ],
    preferments: [],
    batchSize: { by: 'flour', flourGrams: 1000 },
    ...change,
  }
}

export function ingredient(id: string, kind: Ingredient['kind'], percent: number): Ingredient {
  return { id, name: id, kind, percent }
}
