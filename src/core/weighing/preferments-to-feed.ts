import { formulaViews } from '@/core/formula/formula-views.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'

/** A preferment as it is fed before the day: one for all doughs of a session, in grams. */
export interface PrefermentToFeed {
  prefermentId: string
  name: string
  rows: { ingredientId: string; name: string; grams: number }[]
  totalGrams: number
}

/**
 * Every preferment over all doughs of a session, as it is fed, with what clings to its jar on top: nothing of a starter, which
 * is kept. What only some levels take is summed over those.
 */
export function prefermentsToFeed(plan: Plan): PrefermentToFeed[] {
  const found = new Map<string, PrefermentToFeed>()
  for (const batch of plannedBatches(plan)) {
    if (!batch.ok) continue
    for (const { prefermentId, name, kind, rows, totalGrams } of formulaViews(batch.formula)
      .preferments) {
      if (totalGrams <= 0) continue
      const made = batch.formula.preferments.find(({ id }) => id === prefermentId)
      const more = 1 + (kind === 'starter' ? 0 : (made?.clingsGrams ?? 0)) / totalGrams
      const before = found.get(prefermentId)
      const fed = new Map((before?.rows ?? []).map((row) => [row.ingredientId, row]))
      for (const { ingredientId, name: what, grams } of rows) {
        const own = fed.get(ingredientId)?.grams ?? 0
        fed.set(ingredientId, { ingredientId, name: what, grams: own + grams * more })
      }
      found.set(prefermentId, {
        ...{ prefermentId, name, rows: [...fed.values()] },
        totalGrams: (before?.totalGrams ?? 0) + totalGrams * more,
      })
    }
  }
  return [...found.values()].filter(({ totalGrams }) => totalGrams > 0)
}
