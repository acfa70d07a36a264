import type { Formula, Ingredient } from '@/core/formula/formula-record.ts'
import type { ActsOn } from './factor.ts'
import type { Change, Level } from './level.ts'

export type MovedFormula =
  | { ok: true; formula: Formula }
  | { ok: false; reason: 'level-without-value' | 'no-water' }
  | { ok: false; reason: 'factor-names-nothing'; id: string }
  | { ok: false; reason: 'below-other-water'; otherWaterPercent: number }
  | { ok: false; reason: 'taken-flour-runs-out'; mostPercent: number }

/**
 * The formula with the factor set to a level, before the batch is sized. Hydration moves the named water so that all water
 * as such comes to the level; a flour's share is taken from the named other flour; a preferment's share leaves the overall
 * percents, and so the hydration, alone; an option of a choice swaps what it says. Other factors leave the formula alone.
 */
export function movedFormula(formula: Formula, acts: ActsOn, level: Level): MovedFormula {
  if (acts.on === 'choice') return changedFormula(formula, level.changes ?? [])
  if (level.value === null) return { ok: false, reason: 'level-without-value' }
  switch (acts.on) {
    case 'hydration':
      return withHydration(formula, acts.ingredientId, level.value)
    case 'salt':
    case 'yeast':
    case 'ingredient':
      return withPercent(formula, acts.ingredientId, level.value)
    case 'flour-share':
      return atOwnWater(
        withFlourShare(formula, acts.ingredientId, acts.fromIngredientId, level.value),
        level,
      )
    case 'preferment-share':
      return withPrefermentShare(formula, acts.prefermentId, level.value)
    case 'rest-time':
    case 'proof-time':
    case 'cold-hours':
    case 'bake-temperature':
    case 'bake-time':
    case 'fold-count':
    case 'piece-mass':
    case 'own':
      return { ok: true, formula }
  }
}

function withHydration(formula: Formula, waterId: string, hydrationPercent: number): MovedFormula {
  const otherWaterPercent = formula.ingredients.reduce(
    (sum, { id, kind, percent }) => sum + (kind === 'water' && id !== waterId ? percent : 0),
    0,
  )
  const percent = hydrationPercent - otherWaterPercent
  if (percent < 0) return { ok: false, reason: 'below-other-water', otherWaterPercent }
  return withPercent(formula, waterId, percent)
}

function withPercent(formula: Formula, ingredientId: string, percent: number): MovedFormula {
  return withIngredient(formula, ingredientId, (one) => ({ ...one, percent }))
}

function withFlourShare(formula: Formula, id: string, fromId: string, share: number): MovedFormula {
  const flour = formula.ingredients.find((one) => one.id === id)
  const from = formula.ingredients.find((one) => one.id === fromId)
  if (!flour || !from) return { ok: false, reason: 'factor-names-nothing', id: flour ? fromId : id }
  const mostPercent = flour.percent + from.percent
  const left = mostPercent - share
  if (left < -1e-9) return { ok: false, reason: 'taken-flour-runs-out', mostPercent }
  const moved = withPercent(formula, id, share)
  return moved.ok ? withPercent(moved.formula, fromId, Math.max(0, left)) : moved
}

/** A share of flour may have a hydration of its own, as an option has. */
function atOwnWater(moved: MovedFormula, { changes = [] }: Level): MovedFormula {
  const own = changes.filter(({ what }) => what === 'hydration')
  return moved.ok ? changedFormula(moved.formula, own) : moved
}

function withPrefermentShare(formula: Formula, id: string, share: number): MovedFormula {
  if (!formula.preferments.some((one) => one.id === id)) {
    return { ok: false, reason: 'factor-names-nothing', id }
  }
  const preferments = formula.preferments.map((one) =>
    one.id === id ? { ...one, flourSharePercent: share } : one,
  )
  return { ok: true, formula: { ...formula, preferments } }
}

/** An option's swaps in turn; "at its own water" moves the largest water of the formula. */
function changedFormula(formula: Formula, changes: readonly Change[]): MovedFormula {
  const start: MovedFormula = { ok: true, formula }
  return changes.reduce<MovedFormula>(
    (moved, change) => (moved.ok ? withChange(moved.formula, change) : moved),
    start,
  )
}

function withChange(formula: Formula, change: Change): MovedFormula {
  if (change.what === 'hydration') return withOwnWater(formula, change.percent)
  if (change.what !== 'ingredient') return { ok: true, formula }
  return withIngredient(formula, change.ingredientId, (one) => swapped(one, change))
}

function withOwnWater(formula: Formula, percent: number): MovedFormula {
  const waters = formula.ingredients.filter(({ kind }) => kind === 'water')
  const [largest] = waters.toSorted((a, b) => b.percent - a.percent)
  return largest ? withHydration(formula, largest.id, percent) : { ok: false, reason: 'no-water' }
}

/** Another thing in an ingredient's place comes from another bag. */
function swapped(one: Ingredient, change: Extract<Change, { what: 'ingredient' }>): Ingredient {
  const { flourLotId, ...rest } = one
  const bag = change.name === one.name && flourLotId !== undefined ? { flourLotId } : {}
  return { ...rest, ...bag, name: change.name, percent: change.percent ?? one.percent }
}

function withIngredient(
  formula: Formula,
  id: string,
  change: (one: Ingredient) => Ingredient,
): MovedFormula {
  if (!formula.ingredients.some((one) => one.id === id)) {
    return { ok: false, reason: 'factor-names-nothing', id }
  }
  const ingredients = formula.ingredients.map((one) => (one.id === id ? change(one) : one))
  return { ok: true, formula: { ...formula, ingredients } }
}
