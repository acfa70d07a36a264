import type { Ingredient } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'
import { weighSheet } from './weigh-sheet.ts'

export interface ShoppingRow {
  ingredientId: string
  name: string
  kind: Ingredient['kind']
  sessionGrams: number
  /** Over all planned sessions. */
  totalGrams: number
}

/**
 * What to buy: every ingredient over all batches of a session and all planned sessions, what a stock or dry mix leaves over
 * and what clings to a preferment's jar included. Where a choice swaps an ingredient, each option has a row of its own. Tins, dusting flour and toppings are not
 * in it.
 */
export function shoppingTotals(plan: Plan, kitchen: readonly KitchenThing[]): ShoppingRow[] {
  const rows = new Map<string, ShoppingRow>()
  const add = (one: Pick<ShoppingRow, 'ingredientId' | 'name' | 'kind'>, grams: number) => {
    const key = `${one.ingredientId} ${one.name}`
    const sessionGrams = (rows.get(key)?.sessionGrams ?? 0) + grams
    rows.set(key, { ...one, sessionGrams, totalGrams: sessionGrams * plan.plannedSessions })
  }
  for (const batch of plannedBatches(plan)) {
    if (!batch.ok) continue
    const { overall, preferments } = formulaViews(batch.formula)
    for (const { ingredientId, name, kind, grams } of overall)
      add({ ingredientId, name, kind }, grams)
    for (const { prefermentId, kind, rows: parts, totalGrams } of preferments) {
      const made = batch.formula.preferments.find(({ id }) => id === prefermentId)
      const clings = kind === 'starter' || totalGrams === 0 ? 0 : (made?.clingsGrams ?? 0)
      for (const { ingredientId, name, kind: of, grams } of parts)
        add({ ingredientId, name, kind: of }, (grams * clings) / (totalGrams || 1))
    }
  }
  for (const dose of weighSheet(plan, kitchen).doses) {
    if (!dose.ok) continue
    for (const [id, share] of [
      [dose.ingredientId, dose.strength],
      [dose.carrierId, 1 - dose.strength],
    ] as const) {
      const one = plan.formula.ingredients.find((ingredient) => ingredient.id === id)
      if (one) add({ ingredientId: id, name: one.name, kind: one.kind }, dose.leftoverGrams * share)
    }
  }
  return [...rows.values()].filter(({ sessionGrams }) => sessionGrams > 0)
}
