import type { Formula, Ingredient, Preferment } from './formula-record.ts'

/** Grams as a recipe lists them: what each preferment takes, and what the final mix adds beside the preferments. */
export interface RecipeParts {
  ingredients: Omit<Ingredient, 'percent'>[]
  finalDough: { ingredientId: string; grams: number }[]
  preferments: (Pick<Preferment, 'id' | 'name' | 'kind'> & {
    parts: { ingredientId: string; grams: number }[]
  })[]
}

/**
 * The overall formula behind a recipe written on the final-dough basis: every preferment taken apart, all flour pooled to
 * 100 %. The batch is sized by its flour. Refuses a recipe, or a preferment, without flour.
 */
export function overallFromParts(
  parts: RecipeParts,
): { ok: true; formula: Formula } | { ok: false; reason: 'no-flour'; prefermentId: string | null } {
  const flourIds = new Set(
    parts.ingredients.flatMap(({ id, kind }) => (kind === 'flour' ? [id] : [])),
  )
  const all = [...parts.finalDough, ...parts.preferments.flatMap((one) => one.parts)]
  const flourGrams = flourIn(all, flourIds)
  if (!(flourGrams > 0)) return { ok: false, reason: 'no-flour', prefermentId: null }
  const dry = parts.preferments.find((one) => !(flourIn(one.parts, flourIds) > 0))
  if (dry) return { ok: false, reason: 'no-flour', prefermentId: dry.id }
  const ingredients = parts.ingredients.map((one) => {
    const grams = all.reduce(
      (sum, part) => sum + (part.ingredientId === one.id ? part.grams : 0),
      0,
    )
    return { ...one, percent: (grams / flourGrams) * 100 }
  })
  const preferments = parts.preferments.map(({ id, name, kind, parts: own }) => {
    const ownFlour = flourIn(own, flourIds)
    const shares = own.map(({ ingredientId, grams }) => ({
      ingredientId,
      percent: (grams / ownFlour) * 100,
    }))
    return { id, name, kind, flourSharePercent: (ownFlour / flourGrams) * 100, parts: shares }
  })
  return {
    ok: true,
    formula: { ingredients, preferments, batchSize: { by: 'flour', flourGrams } },
  }
}

function flourIn(rows: { ingredientId: string; grams: number }[], flourIds: Set<string>): number {
  return rows.reduce((sum, row) => sum + (flourIds.has(row.ingredientId) ? row.grams : 0), 0)
}
