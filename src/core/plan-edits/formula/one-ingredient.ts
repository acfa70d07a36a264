import type { Ingredient, IngredientKind } from '@/core/formula/formula-record.ts'
import { waterContentOf } from '@/core/formula/water-contents.ts'
import { inIngredient } from '@/core/plan-edits/parts/in-part.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

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

/** The plan with a flour taken from one of the kitchen's bags, which it then uses; or from none that is named (null). */
export function withFlourBag(plan: Plan, ingredientId: string, lotId: string | null): Plan {
  const next = inIngredient(plan, ingredientId, ({ flourLotId: _, ...one }) =>
    lotId === null ? one : { ...one, flourLotId: lotId },
  )
  if (lotId === null || plan.kitchenIds.includes(lotId)) return next
  return { ...next, kitchenIds: [...plan.kitchenIds, lotId] }
}
