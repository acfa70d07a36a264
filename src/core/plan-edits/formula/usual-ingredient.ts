import type { Ingredient, IngredientKind, Preferment } from '@/core/formula/formula-record.ts'

const usualNames: Record<IngredientKind, { name: string; percent: number }> = {
  flour: { name: 'Wheat flour', percent: 0 },
  water: { name: 'Water', percent: 65 },
  liquid: { name: 'Milk', percent: 10 },
  salt: { name: 'Salt', percent: 2 },
  yeast: { name: 'Instant yeast', percent: 0.3 },
  fat: { name: 'Olive oil', percent: 3 },
  other: { name: 'Malt', percent: 0.5 },
}

/** A new ingredient of a kind with a usual amount (common practice, from memory), to be changed. */
export function usualIngredient(kind: IngredientKind, id: string): Ingredient {
  const yeast = kind === 'yeast' ? { yeastForm: 'instant' as const } : {}
  const liquid = kind === 'liquid' ? { waterPercent: 88 } : {}
  return { id, kind, ...usualNames[kind], ...yeast, ...liquid }
}

/** A flour beside the flours that are there: all of it where there is none, else a second one, of which nothing goes in yet. */
export function flourBeside(flours: readonly Ingredient[], id: string): Ingredient {
  const flour = usualIngredient('flour', id)
  return flours.length === 0 ? { ...flour, percent: 100 } : { ...flour, name: 'Other flour' }
}

/**
 * A poolish of equal flour and water with a thousandth of its flour in yeast (published examples: 0.06 to 0.1 %), fermenting
 * ahead with a fifth of the flour.
 */
export function usualPreferment(ingredients: readonly Ingredient[], id: string): Preferment {
  const flour = ingredients.find((each) => each.kind === 'flour')
  const water = ingredients.find((each) => each.kind === 'water')
  const yeast = ingredients.find((each) => each.kind === 'yeast' && each.percent >= 0.1)
  const part = (each: Ingredient | undefined, percent: number) =>
    each ? [{ ingredientId: each.id, percent }] : []
  const parts = [...part(flour, 100), ...part(water, 100), ...part(yeast, 0.1)]
  return { id, name: 'Poolish', kind: 'poolish', flourSharePercent: 20, parts }
}
