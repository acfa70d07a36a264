import type { Formula, Ingredient } from './formula-record.ts'
import { kindOfName, yeastFormOfName } from './kind-of-name.ts'
import type { LineTrouble } from './line-trouble.ts'
import { type ReadAmount, readLine } from './text-line.ts'
import { waterContentOf } from './water-contents.ts'

/** One line of the paste with what was understood of it, for correction. Lines count from 1; empty ones are left out. */
export type ReadFormulaLine = { line: number; text: string } & (
  | { ok: true; ingredientId: string; grams: number | null; percent: number; fromVolume: boolean }
  | { ok: false; reason: LineTrouble | 'percent-without-flour' | 'duplicate'; name: string }
)

export interface FormulaFromText {
  lines: ReadFormulaLine[]
  /** Null when no flour was understood. */
  formula: Formula | null
  reason: 'empty' | 'no-flour' | null
}

type Understood = { line: number; text: string; read: Extract<ReadAmount, { ok: true }> }

/**
 * A formula pasted as text, one ingredient a line, amounts by weight or percent. With any flour in grams, percents are of
 * the flours' sum; with percents alone, flours without another statement are scaled to 100 and the batch is sized at
 * `flourGramsWhenPercent`. Every line comes back with what was understood, or the reason it was not; no line is guessed.
 */
export function formulaFromText(
  text: string,
  newId: () => string,
  flourGramsWhenPercent = 1000,
): FormulaFromText {
  const rows = text
    .split(/\r\n|\r|\n/u)
    .map((row, index) => ({ line: index + 1, text: row.trim(), read: readLine(row) }))
    .filter((row) => row.text !== '')
  const understood = rows.filter((row): row is Understood => row.read.ok).filter(isFirstOfItsName)
  const flours = understood.filter(({ read }) => kindOfName(read.name) === 'flour')
  const flourGrams = sumOf(flours, 'grams')
  const flourPercent = sumOf(flours, 'percent')
  const perPercent = flourPercent > 0 && flourGrams > 0 ? Number.NaN : flourPercent / 100
  const ingredients: Ingredient[] = []
  const lines = rows.map(({ line, text: raw, read }): ReadFormulaLine => {
    if (!read.ok) return { line, text: raw, ok: false, reason: read.reason, name: read.name }
    const { name } = read
    if (!understood.some((one) => one.line === line)) {
      return { line, text: raw, ok: false, reason: 'duplicate', name }
    }
    const percent = percentOf(read, flourGrams, perPercent)
    if (percent === null)
      return { line, text: raw, ok: false, reason: 'percent-without-flour', name }
    const ingredient = ingredientOf(newId(), name, percent)
    ingredients.push(ingredient)
    const { fromVolume, grams } = read
    return { line, text: raw, ok: true, ingredientId: ingredient.id, grams, percent, fromVolume }
  })
  const hasFlour = ingredients.some(({ kind, percent }) => kind === 'flour' && percent > 0)
  if (!hasFlour) return { lines, formula: null, reason: rows.length === 0 ? 'empty' : 'no-flour' }
  const batchSize = { by: 'flour' as const, flourGrams: flourGrams || flourGramsWhenPercent }
  return { lines, formula: { ingredients, preferments: [], batchSize }, reason: null }
}

function isFirstOfItsName(row: Understood, index: number, rows: Understood[]): boolean {
  const same = (one: Understood) => one.read.name.toLowerCase() === row.read.name.toLowerCase()
  return rows.findIndex(same) === index
}

/** Percent of flour of one understood amount; null where there is nothing to take it of. */
function percentOf(
  read: Extract<ReadAmount, { ok: true }>,
  flourGrams: number,
  perPercent: number,
): number | null {
  if (read.grams !== null) return flourGrams > 0 ? (read.grams / flourGrams) * 100 : null
  if (flourGrams > 0) return kindOfName(read.name) === 'flour' ? null : read.percent
  return perPercent > 0
    ? kindOfName(read.name) === 'flour'
      ? read.percent / perPercent
      : read.percent
    : null
}

function ingredientOf(id: string, name: string, percent: number): Ingredient {
  const kind = kindOfName(name)
  const plain = { id, name: name.slice(0, 200), kind, percent }
  if (kind === 'yeast') return { ...plain, yeastForm: yeastFormOfName(name) }
  const content =
    kind === 'flour' || kind === 'water' || kind === 'salt' ? null : waterContentOf(name)
  return content ? { ...plain, waterPercent: content.waterPercent } : plain
}

function sumOf(rows: Understood[], field: 'grams' | 'percent'): number {
  return rows.reduce((sum, { read }) => sum + (read[field] ?? 0), 0)
}
