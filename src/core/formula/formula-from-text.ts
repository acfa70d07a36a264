import type { Formula, Ingredient, IngredientKind } from './formula-record.ts'
import { headOfName } from './head-of-name.ts'
import { isPreferment, kindOfName, yeastFormOfName } from './kind-of-name.ts'
import type { LineTrouble } from './line-trouble.ts'
import { type ReadAmount, readLine } from './text-line.ts'
import { waterContentOf } from './water-contents.ts'

/**
 * One line of the paste with what was understood of it, for correction. Lines count from 1; empty ones are left out. A line
 * that is refused only for want of a flour has its kind too, since another kind may mend it.
 */
export type ReadFormulaLine = { line: number; text: string; name: string } & (
  | ({ ok: true; kind: IngredientKind } & Amounts)
  | { ok: false; kind: IngredientKind | null; reason: Refusal }
)

type Amounts = { grams: number | null; percent: number; fromVolume: boolean }
type Refusal = LineTrouble | Unplaced | 'preferment' | 'duplicate'

/** Why an amount that was read is no percent of flour. */
type Unplaced = 'percent-without-flour' | 'weight-without-flour' | 'no-flour-at-all'

/** What the text says twice and not alike: it is read as weighed, and asked about. */
export type FormulaDoubt =
  | { what: 'percent'; name: string; statedPercent: number; weighedPercent: number }
  | { what: 'total'; statedGrams: number; linesGrams: number }

export interface FormulaFromText {
  lines: ReadFormulaLine[]
  /** Stated percents and totals that disagree with the weights. */
  doubts: FormulaDoubt[]
  /** Null when no flour was understood. */
  formula: Formula | null
  reason: 'empty' | 'no-flour' | null
}

type Understood = {
  line: number
  text: string
  kind: IngredientKind
  read: Extract<ReadAmount, { ok: true }>
}

/**
 * A formula pasted as text, one ingredient a line, amounts by weight or percent. With any flour in grams, percents are of
 * the flours' sum; with percents alone, flours without another statement are scaled to 100 and the batch is sized at
 * `flourGramsWhenPercent`. Every line comes back with what was understood, or the reason it was not; no line is guessed.
 * `kinds` are the baker's corrections by name as read: what has one is taken for that, a preferment too.
 */
export function formulaFromText(
  text: string,
  newId: () => string,
  kinds: ReadonlyMap<string, IngredientKind> = new Map(),
  flourGramsWhenPercent = 1000,
): FormulaFromText {
  const all = text
    .split(/\r\n|\r|\n/u)
    .map((row, index) => ({ line: index + 1, text: row.trim(), read: readLine(row) }))
    .filter((row) => row.text !== '')
  const totals = all.filter(({ read }) => isTotal(read))
  const rows = all.filter((row) => !totals.includes(row))
  const taken = rows.flatMap((row): Understood[] => {
    const { read } = row
    if (!read.ok || (isPreferment(read.name) && !kinds.has(read.name))) return []
    return [{ ...row, read, kind: kinds.get(read.name) ?? kindOfName(read.name) }]
  })
  const understood = taken.filter(isFirstOfItsName)
  const flours = understood.filter(({ kind }) => kind === 'flour')
  const sums = { grams: sumOf(flours, 'grams'), percent: sumOf(flours, 'percent') }
  const ingredients: Ingredient[] = []
  const lines = rows.map(({ line, text: raw, read }): ReadFormulaLine => {
    const { name } = read
    const refused = (reason: Refusal, kind: IngredientKind | null = null): ReadFormulaLine => {
      return { line, text: raw, name, ok: false, kind, reason }
    }
    if (!read.ok) return refused(read.reason)
    if (!taken.some((each) => each.line === line)) return refused('preferment')
    const one = understood.find((each) => each.line === line)
    if (!one) return refused('duplicate')
    const percent = percentOf(one, sums)
    if (typeof percent === 'string') return refused(percent, one.kind)
    ingredients.push(ingredientOf(newId(), one, percent))
    const { fromVolume, grams } = read
    return { line, text: raw, name, ok: true, kind: one.kind, grams, percent, fromVolume }
  })
  const hasFlour = ingredients.some(({ kind, percent }) => kind === 'flour' && percent > 0)
  const doubts = doubtsOf(lines, rows, totals)
  if (!hasFlour)
    return { lines, doubts, formula: null, reason: rows.length === 0 ? 'empty' : 'no-flour' }
  const batchSize = { by: 'flour' as const, flourGrams: sums.grams || flourGramsWhenPercent }
  return { lines, doubts, formula: { ingredients, preferments: [], batchSize }, reason: null }
}

type Row = { line: number; read: ReadAmount }

const totalName =
  /^(?:the )?(?:total|sum|in all|all together|altogether)(?: (?:dough|weight|mass|batch))?$/iu

/** A line that states what the others come to, and is none of them. */
function isTotal(read: ReadAmount): boolean {
  return read.ok && totalName.test(read.name)
}

/** How far a stated figure may lie from the weights by its own rounding: half of its last digit, or a hundredth of it. */
function agrees(stated: number, weighed: number): boolean {
  const [, decimals = ''] = String(stated).split('.')
  return Math.abs(stated - weighed) <= Math.max(0.5 / 10 ** decimals.length, stated / 100)
}

function doubtsOf(
  lines: readonly ReadFormulaLine[],
  rows: readonly Row[],
  totals: readonly Row[],
): FormulaDoubt[] {
  const ofPercent = lines.flatMap((line): FormulaDoubt[] => {
    const read = rows.find((row) => row.line === line.line)?.read
    if (!line.ok || !read?.ok || read.grams === null || read.besidePercent === null) return []
    const { name, percent: weighedPercent } = line
    const statedPercent = read.besidePercent
    if (agrees(statedPercent, weighedPercent)) return []
    return [{ what: 'percent', name, statedPercent, weighedPercent }]
  })
  const weights = lines.map((line) => (line.ok ? line.grams : null))
  const linesGrams = weights.reduce<number>((sum, grams) => sum + (grams ?? 0), 0)
  const ofTotal = totals.flatMap(({ read }): FormulaDoubt[] => {
    if (!read.ok || read.grams === null || weights.includes(null)) return []
    return agrees(read.grams, linesGrams)
      ? []
      : [{ what: 'total', statedGrams: read.grams, linesGrams }]
  })
  return [...ofPercent, ...ofTotal]
}

function isFirstOfItsName(row: Understood, index: number, rows: Understood[]): boolean {
  const same = (one: Understood) => one.read.name.toLowerCase() === row.read.name.toLowerCase()
  return rows.findIndex(same) === index
}

/** Percent of flour of one understood amount, or why there is none. */
function percentOf(
  { read, kind }: Understood,
  flour: { grams: number; percent: number },
): number | Unplaced {
  if (read.grams !== null)
    return flour.grams > 0 ? (read.grams / flour.grams) * 100 : 'weight-without-flour'
  if (flour.grams > 0) return kind === 'flour' ? 'percent-without-flour' : read.percent
  if (!(flour.percent > 0)) return 'no-flour-at-all'
  return kind === 'flour' ? (read.percent / flour.percent) * 100 : read.percent
}

function ingredientOf(id: string, { read: { name }, kind }: Understood, percent: number) {
  const plain = { id, name: name.slice(0, 200), kind, percent }
  if (kind === 'yeast') return { ...plain, yeastForm: yeastFormOfName(name) }
  const content =
    kind === 'flour' || kind === 'water' || kind === 'salt'
      ? null
      : waterContentOf(headOfName(name))
  return content ? { ...plain, waterPercent: content.waterPercent } : plain
}

function sumOf(rows: Understood[], field: 'grams' | 'percent'): number {
  return rows.reduce((sum, { read }) => sum + (read[field] ?? 0), 0)
}
