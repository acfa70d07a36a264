import type { IngredientKind } from '@/core/formula/formula-record.ts'

/** Kinds of ingredients as menus and buttons write them. */
export const ingredientKindNames: Record<IngredientKind, string> = {
  flour: 'flour',
  water: 'water',
  liquid: 'liquid',
  salt: 'salt',
  yeast: 'yeast',
  fat: 'fat',
  other: 'other',
}
