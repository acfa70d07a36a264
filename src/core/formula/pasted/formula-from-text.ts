import type { Formula, IngredientKind } from '@/core/formula/formula-record.ts'
import { doubtsOf, type FormulaDoubt } from './doubts.ts'
import { formulaOfParts, sumOf } from './formula-of-parts.ts'
import type { AsideReason } from './line-purpose.ts'
import { type Part, partsOfText, type TextParts } from './parts-of-text.ts'
import type { Entry, PastedText, QuestionReason } from './pasted-text.ts'
import { readText } from './read-text.ts'

/**
 * What one line of the paste, or a part of it, was understood as. Lines count from 1; empty ones are left out. Amounts are of
 * the whole formula: grams where flour was weighed, and percent of all flour.
 */
export type ReadFormulaItem = { line: number; text: string; name: string } & (
  | {
      is: 'ingredient'
      kind: IngredientKind
      fromVolume: boolean
      of: string | null
      grams: number | null
      percent: number
    }
  | {
      is: 'preferment'
      kind: null
      parts: { name: string; grams: number | null; percent: number }[]
    }
  | { is: 'aside'; kind: null; why: AsideReason }
  | { is: 'question'; kind: IngredientKind | null; why: QuestionReason; mends: string[] }
)

export interface FormulaFromText {
  items: ReadFormulaItem[]
  /** What the text says twice and not alike. */
  doubts: FormulaDoubt[]
  /** Null when no flour was understood. */
  formula: Formula | null
  reason: 'empty' | 'no-flour' | null
}

/**
 * A formula pasted as bakers write it, in English, German, French or Italian: lists, tables, several ingredients in a line,
 * preferments under a heading or with their hydration. Every line is an ingredient, a part of a preferment, set aside, or a
 * question; totals, stated percents and hydration are held against the lines. With any flour in grams, percents are of the
 * flours' sum; with percents alone the batch is sized at `flourGramsWhenPercent`. `kinds` are the baker's corrections by name
 * as read: what has one is taken for that, a preferment too.
 */
export function formulaFromText(
  text: string,
  newId: () => string,
  kinds: ReadonlyMap<string, IngredientKind> = new Map(),
  flourGramsWhenPercent = 1000,
): FormulaFromText {
  const read = readText(text, kinds)
  const parts = partsOfText(read)
  const formula = formulaOfParts(parts, newId, flourGramsWhenPercent)
  const items = itemsOf(read, parts)
  const doubts = doubtsOf(read, parts, formula)
  if (formula) return { items, doubts, formula, reason: null }
  return { items, doubts, formula: null, reason: items.length === 0 ? 'empty' : 'no-flour' }
}

function itemsOf(text: PastedText, parts: TextParts): ReadFormulaItem[] {
  const ahead = parts.preferments.flatMap((one) =>
    one.parts.map((part) => ({ ...part, of: one.name })),
  )
  const loose = parts.loose.map((part) => ({ ...part, of: null }))
  const whole = (parts.overall ?? []).map((part) => ({ ...part, of: null }))
  const all = [...whole, ...loose, ...ahead]
  const flour = sumOf(parts.overall ?? all, 'flour')
  const said = ({ amount }: Part) => ({
    grams: parts.byWeight ? amount : null,
    percent: flour > 0 ? (amount / flour) * 100 : 0,
  })
  const itemOf = (entry: Entry, base: { line: number; text: string }): ReadFormulaItem => {
    const why = parts.refused.get(entry)
    if (why !== undefined && entry.is !== 'aside') {
      const kind = entry.is === 'preferment' ? null : entry.kind
      const mends = entry.is === 'preferment' && why === 'hydration-unsaid' ? entry.mends : []
      return { ...base, is: 'question', name: entry.name, kind, why, mends }
    }
    if (entry.is === 'aside')
      return { ...base, is: 'aside', name: entry.text, kind: null, why: entry.why }
    if (entry.is === 'question') return { ...base, ...entry }
    const own = all.filter((part) => part.entry === entry)
    if (entry.is === 'preferment')
      return {
        ...base,
        is: 'preferment',
        kind: null,
        name: entry.name,
        parts: own.map((part) => ({ name: part.name, ...said(part) })),
      }
    const [part] = own
    const { kind, name, fromVolume } = entry
    const amounts = part ? said(part) : { grams: null, percent: 0 }
    return { ...base, is: 'ingredient', kind, name, fromVolume, of: part?.of ?? null, ...amounts }
  }
  return text.rows.flatMap(({ line, text: raw, entries }) =>
    entries.map((entry) => itemOf(entry, { line, text: raw })),
  )
}
