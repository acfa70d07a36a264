import { batchGrams } from './batch-grams.ts'
import type { Formula, Ingredient, Preferment } from './formula-record.ts'
import { flourPercent } from './totals.ts'

/** One ingredient in one view; `percent` is of that view's own flour, null where the view has no flour. */
export interface AmountRow {
  ingredientId: string
  name: string
  kind: Ingredient['kind']
  grams: number
  percent: number | null
}

export interface PrefermentView {
  prefermentId: string
  name: string
  kind: Preferment['kind']
  rows: AmountRow[]
  flourGrams: number
  waterGrams: number
  totalGrams: number
  /** Water as such on the preferment's own flour; null without flour. */
  hydrationPercent: number | null
}

export interface FinalDoughView {
  /** What is added at the mix beside the preferments; an amount below zero means a preferment holds more than the whole. */
  rows: AmountRow[]
  preferments: { prefermentId: string; name: string; grams: number; percent: number | null }[]
  flourGrams: number
  totalGrams: number
}

export interface FormulaViews {
  flourGrams: number
  doughGrams: number
  overall: AmountRow[]
  preferments: PrefermentView[]
  finalDough: FinalDoughView
}

/**
 * The three views of one formula, in grams and percents: overall, each preferment, final dough. Every ingredient's overall
 * grams equal its grams in the preferments plus its grams in the final dough, and the totals likewise.
 */
export function formulaViews(formula: Formula): FormulaViews {
  const { flourGrams, doughGrams } = batchGrams(formula)
  const base = flourPercent(formula)
  const perPercent = base > 0 ? flourGrams / base : 0
  const overall = formula.ingredients.map((one) => row(one, one.percent * perPercent, flourGrams))
  const preferments = formula.preferments.map((one) => prefermentView(formula, one, flourGrams))
  return {
    flourGrams,
    doughGrams,
    overall,
    preferments,
    finalDough: finalDoughView(formula, overall, preferments),
  }
}

function prefermentView(
  formula: Formula,
  preferment: Preferment,
  flourGrams: number,
): PrefermentView {
  const own = (flourGrams * preferment.flourSharePercent) / 100
  const rows = preferment.parts.flatMap((part) => {
    const ingredient = formula.ingredients.find(({ id }) => id === part.ingredientId)
    return ingredient ? [row(ingredient, (own * part.percent) / 100, own)] : []
  })
  const flour = gramsOf(rows, 'flour')
  const water = gramsOf(rows, 'water')
  return {
    prefermentId: preferment.id,
    name: preferment.name,
    kind: preferment.kind,
    rows,
    flourGrams: flour,
    waterGrams: water,
    totalGrams: sum(rows),
    hydrationPercent: flour > 0 ? (water / flour) * 100 : null,
  }
}

function finalDoughView(
  formula: Formula,
  overall: AmountRow[],
  preferments: PrefermentView[],
): FinalDoughView {
  const ahead = new Map<string, number>()
  for (const { ingredientId, grams } of preferments.flatMap(({ rows }) => rows)) {
    ahead.set(ingredientId, (ahead.get(ingredientId) ?? 0) + grams)
  }
  const left = overall.map((whole) => ({
    ...whole,
    grams: remainder(whole.grams, ahead.get(whole.ingredientId) ?? 0),
  }))
  const flour = gramsOf(left, 'flour')
  const rows = formula.ingredients.map((one, index) => row(one, left[index]?.grams ?? 0, flour))
  const parts = preferments.map(({ prefermentId, name, totalGrams }) => ({
    prefermentId,
    name,
    grams: totalGrams,
    percent: flour > 0 ? (totalGrams / flour) * 100 : null,
  }))
  return {
    rows,
    preferments: parts,
    flourGrams: flour,
    totalGrams: sum(rows) + parts.reduce((total, { grams }) => total + grams, 0),
  }
}

/** What is left, with differences at the size of float dust taken for nothing. */
function remainder(whole: number, taken: number): number {
  const left = whole - taken
  return Math.abs(left) <= 1e-12 * Math.max(whole, taken) ? 0 : left
}

function row(ingredient: Ingredient, grams: number, flourGrams: number): AmountRow {
  const { id, name, kind } = ingredient
  const percent = flourGrams > 0 ? (grams / flourGrams) * 100 : null
  return { ingredientId: id, name, kind, grams, percent }
}

function gramsOf(rows: AmountRow[], kind: Ingredient['kind']): number {
  return sum(rows.filter((one) => one.kind === kind))
}

function sum(rows: { grams: number }[]): number {
  return rows.reduce((total, { grams }) => total + grams, 0)
}
