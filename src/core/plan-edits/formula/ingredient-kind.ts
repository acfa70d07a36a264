import type { Ingredient, IngredientKind } from '@/core/formula/formula-record.ts'
import { waterContentOf } from '@/core/formula/water-contents.ts'

/** The ingredient as another kind, with what that kind is usually told by and without what it is not. */
export function asKind(one: Ingredient, kind: IngredientKind): Ingredient {
  const { waterPercent: _, yeastForm: __, flourLotId: ___, ...bare } = one
  if (kind === 'yeast') return { ...bare, kind, yeastForm: 'instant' }
  const water = waterContentOf(one.name)
  const holdsWater = kind === 'liquid' || kind === 'fat' || kind === 'other'
  return holdsWater && water
    ? { ...bare, kind, waterPercent: water.waterPercent }
    : { ...bare, kind }
}
