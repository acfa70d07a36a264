import type { Formula, Preferment } from '@/core/formula/formula-record.ts'
import type { ActsOn } from './factor.ts'

/** One thing that goes into a dough: an ingredient of the final mix, a part of a preferment, or a ripe preferment whole. */
export interface DoughPart {
  ingredientId: string | null
  prefermentId: string | null
}

/** Grams a part puts above and below the line of a level, for each gram of it: level = 100 × Σ above / Σ below. */
export interface LevelShare {
  above: number
  below: number
}

const percentageFactors: ReadonlySet<ActsOn['on']> = new Set<ActsOn['on']>([
  'hydration',
  'salt',
  'yeast',
  'ingredient',
  'flour-share',
  'preferment-share',
])

/** Whether a factor's level can be read back from weights: every factor that acts on a percentage. */
export function readsFromWeights(acts: ActsOn): boolean {
  return percentageFactors.has(acts.on)
}

/**
 * What one gram of a part adds above and below the line of the factor's level. Below stands all flour; above stands water
 * as such (hydration), the named ingredient (salt, yeast, any ingredient, a flour's share) or the flour in the named
 * preferment (its share). A whole preferment counts by its parts: a starter of hydration h gives h/(1+h) water and 1/(1+h)
 * flour. Null for a factor that does not act on a percentage.
 */
export function levelShare(formula: Formula, acts: ActsOn, part: DoughPart): LevelShare | null {
  if (!readsFromWeights(acts)) return null
  if (part.ingredientId !== null)
    return ingredientShare(formula, acts, part.ingredientId, part.prefermentId)
  const preferment = formula.preferments.find(({ id }) => id === part.prefermentId)
  return preferment ? wholeShare(formula, acts, preferment) : { above: 0, below: 0 }
}

function ingredientShare(
  formula: Formula,
  acts: ActsOn,
  ingredientId: string,
  prefermentId: string | null,
): LevelShare {
  const kind = formula.ingredients.find(({ id }) => id === ingredientId)?.kind
  const below = kind === 'flour' ? 1 : 0
  if (acts.on === 'hydration') return { above: kind === 'water' ? 1 : 0, below }
  if (acts.on === 'preferment-share') {
    return { above: prefermentId === acts.prefermentId ? below : 0, below }
  }
  return { above: 'ingredientId' in acts && acts.ingredientId === ingredientId ? 1 : 0, below }
}

function wholeShare(formula: Formula, acts: ActsOn, preferment: Preferment): LevelShare {
  const total = preferment.parts.reduce((sum, { percent }) => sum + percent, 0)
  const share = { above: 0, below: 0 }
  if (!(total > 0)) return share
  for (const { ingredientId, percent } of preferment.parts) {
    const one = ingredientShare(formula, acts, ingredientId, preferment.id)
    share.above += (one.above * percent) / total
    share.below += (one.below * percent) / total
  }
  return share
}

/** What a gram of dusting flour, of hand water or of oil does to the level: flour nobody named counts below only. */
export function workedInShare(
  formula: Formula,
  acts: ActsOn,
  what: 'dusting-flour' | 'hand-water' | 'oil',
): LevelShare | null {
  if (!readsFromWeights(acts)) return null
  if (what === 'dusting-flour') return { above: 0, below: 1 }
  if (what === 'hand-water') return { above: acts.on === 'hydration' ? 1 : 0, below: 0 }
  const named = 'ingredientId' in acts ? acts.ingredientId : null
  const kind = formula.ingredients.find(({ id }) => id === named)?.kind
  return { above: acts.on === 'ingredient' && kind === 'fat' ? 1 : 0, below: 0 }
}
