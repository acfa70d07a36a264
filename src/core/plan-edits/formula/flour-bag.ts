import { inIngredient } from '@/core/plan-edits/parts/in-part.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** The plan with a flour taken from one of the kitchen's bags, which it then uses; or from none that is named (null). */
export function withFlourBag(plan: Plan, ingredientId: string, lotId: string | null): Plan {
  const next = inIngredient(plan, ingredientId, ({ flourLotId: _, ...one }) =>
    lotId === null ? one : { ...one, flourLotId: lotId },
  )
  if (lotId === null || plan.kitchenIds.includes(lotId)) return next
  return { ...next, kitchenIds: [...plan.kitchenIds, lotId] }
}
