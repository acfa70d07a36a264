import type { IngredientKind } from '@/core/formula/formula-record.ts'
import { headOfName } from '@/core/formula/head-of-name.ts'
import type { YeastForm } from '@/core/formula/yeast-conversion.ts'
import type { Amount, Entry, PastedText, QuestionReason, Section } from './pasted-text.ts'
import { classOfPreferment, grainOfPreferment } from './preferment-class.ts'
import { asksForBuild } from './preferment-line.ts'

export type IngredientEntry = Extract<Entry, { is: 'ingredient' }>
export type PrefermentEntry = Extract<Entry, { is: 'preferment' }>

/** An amount of one thing in one part of the dough, in grams, or in percents where no flour was weighed. */
export interface Part {
  name: string
  kind: IngredientKind
  amount: number
  /** What its line says of its yeast. */
  yeastForm?: YeastForm | null
  entry: Entry
}

export interface PrefermentParts {
  name: string
  parts: Part[]
}

export interface TextParts {
  /** Amounts are grams; else parts in the hundred. */
  byWeight: boolean
  /** What goes into the final dough beside the preferments. */
  loose: Part[]
  preferments: PrefermentParts[]
  /** The whole by itself, where the text gives it apart. */
  overall: Part[] | null
  /** Entries that cannot stand, with why. */
  refused: Map<Entry, QuestionReason>
  /** Preferments of which the dough takes more than was built. */
  overdrawn: { name: string; built: number; taken: number }[]
  /** Preferments whose own line says another weight than its parts come to. */
  otherwise: { name: string; stated: number; parts: number }[]
}

/** The ingredients of a pasted text part by part, with every preferment taken apart into its flour, water and the rest. */
export function partsOfText({ rows, sections }: PastedText): TextParts {
  const entries = rows.flatMap((row) => row.entries)
  const found = entries.filter((one) => one.is === 'ingredient')
  const ahead = entries.filter((one) => one.is === 'preferment')
  const refused = new Map<Entry, QuestionReason>()
  const byWeight =
    found.some((one) => one.kind === 'flour' && one.amount.grams !== null) ||
    ahead.some((one) => one.build.length > 0)
  const base = baseFlour(found, ahead, byWeight)
  const worthOf = (entry: Entry, kind: IngredientKind | null, amount: Amount): number | null => {
    const value = valueIn(amount, kind, byWeight, base)
    if (typeof value === 'number') return value
    refused.set(entry, value)
    return null
  }
  const partsIn = (section: Section): Part[] => {
    const known = new Set<string>()
    return found
      .filter((one) => one.section === section.at)
      .flatMap((entry): Part[] => {
        const amount = worthOf(entry, entry.kind, entry.amount)
        if (amount === null) return []
        const key = entry.name.toLowerCase()
        if (known.has(key)) {
          refused.set(entry, 'duplicate')
          return []
        }
        known.add(key)
        return [{ name: entry.name, kind: entry.kind, amount, yeastForm: entry.yeastForm, entry }]
      })
  }
  const made = new Map(sections.map((one) => [one.at, partsIn(one)]))
  const overallSection = sections.find(
    (one) => one.kind === 'overall' && (made.get(one.at) ?? []).length > 0,
  )
  const loose = sections
    .filter((one) => one.kind === 'final')
    .flatMap((one) => made.get(one.at) ?? [])
  const overall = overallSection ? (made.get(overallSection.at) ?? []) : null
  const everyFlour = [...(overall ?? []), ...[...made.values()].flat()].filter(
    (one) => one.kind === 'flour',
  )
  const built = sections
    .filter(
      (one) =>
        one.kind === 'preferment' &&
        ((made.get(one.at) ?? []).length > 0 || ahead.some((each) => each.section === one.at)),
    )
    .map((section) => ({
      section,
      parts: made.get(section.at) ?? [],
      taken: null as number | null,
    }))
  const preferments: PrefermentParts[] = []
  const overdrawn: TextParts['overdrawn'] = []
  const otherwise: TextParts['otherwise'] = []
  for (const entry of ahead) {
    const from = builtFor(
      entry,
      built.map((one) => one.section),
      sections,
    )
    const source = built.find((one) => one.section === from)
    if (source) {
      const taken = entry.amount ? worthOf(entry, null, entry.amount) : null
      source.taken = taken ?? source.taken
      continue
    }
    const own = (made.get(entry.section) ?? []).filter(({ kind }) => kind === 'flour')
    const inside = sections.some((one) => one.at === entry.section && one.kind === 'preferment')
    const parts = partsOf(entry, inside && own.length > 0 ? own : everyFlour, (amount) =>
      worthOf(entry, null, amount),
    )
    if (typeof parts === 'string') {
      refused.set(entry, parts)
      continue
    }
    const whole = entry.build.reduce((sum, { grams }) => sum + grams, 0)
    const said = entry.amount?.grams ?? null
    if (whole > 0 && said !== null && said < whole * 0.99)
      otherwise.push({ name: entry.name, stated: said, parts: whole })
    const into = built.find((one) => one.section.at === entry.section)
    if (into) into.parts.push(...parts)
    else preferments.push({ name: entry.name, parts })
  }
  for (const { section, parts, taken } of built) {
    const whole = parts.reduce((sum, { amount }) => sum + amount, 0)
    const share = taken === null || whole === 0 ? 1 : taken / whole
    if (byWeight && share > 1.01)
      overdrawn.push({ name: section.name, built: whole, taken: taken ?? 0 })
    const scaled = parts.map((part) => ({ ...part, amount: part.amount * share }))
    if (parts.some(({ kind }) => kind === 'flour'))
      preferments.push({ name: section.name, parts: scaled })
    else loose.push(...scaled)
  }
  return { byWeight, loose, preferments, overall, refused, overdrawn, otherwise }
}

type Base = { grams: number; percent: number; hidden: boolean }

/** Flour that percents are of: all flours with a weight, and whether more stands hidden in preferments. */
function baseFlour(found: IngredientEntry[], ahead: PrefermentEntry[], byWeight: boolean): Base {
  const flours = found.filter(({ kind }) => kind === 'flour')
  const sum = (pick: (amount: Amount) => number | null) =>
    flours.reduce((all, { amount }) => all + (pick(amount) ?? 0), 0)
  const hidden =
    byWeight && ahead.some((one) => one.hydrationPercent !== null || one.build.length > 0)
  return { grams: sum((one) => one.grams), percent: sum((one) => one.percent), hidden }
}

function valueIn(
  amount: Amount,
  kind: IngredientKind | null,
  byWeight: boolean,
  base: Base,
): number | QuestionReason {
  if (byWeight) {
    if (amount.grams !== null) return amount.grams
    if (kind === 'flour') return 'percent-without-flour'
    return base.hidden ? 'percent-of-which-flour' : (amount.percent / 100) * base.grams
  }
  if (amount.grams !== null) return 'weight-without-flour'
  if (!(base.percent > 0)) return 'no-flour-at-all'
  return amount.percent
}

/** The part under a heading of its own that a line in the dough refers to. */
function builtFor(entry: PrefermentEntry, built: readonly Section[], sections: readonly Section[]) {
  const others = built.filter((one) => one.at !== entry.section)
  const inside = sections.find((one) => one.at === entry.section)
  const { sort } = classOfPreferment(entry.name)
  const named = others.find((one) => one.name.toLowerCase() === entry.name.toLowerCase())
  const alike = others.filter((one) => classOfPreferment(one.name).sort === sort)
  const only = inside?.kind === 'preferment' || others.length !== 1 ? null : others[0]
  const general = sort === 'sponge' || sort === 'sour' ? only : null
  if (entry.hydrationPercent !== null && inside?.kind === 'preferment') return named
  return named ?? (alike.length === 1 ? alike[0] : null) ?? general
}

/** Flour and water of a preferment that is told in one line, or what is missing to know them. */
function partsOf(
  entry: PrefermentEntry,
  flours: readonly Part[],
  worthOf: (amount: Amount) => number | null,
): Part[] | QuestionReason {
  if (entry.build.length > 0) {
    const built = entry.build.reduce((sum, { grams }) => sum + grams, 0)
    const taken = entry.amount === null ? built : worthOf(entry.amount)
    if (taken === null) return 'percent-of-which-flour'
    if (taken > built * 1.01) return 'more-than-built'
    return entry.build.map(({ name, kind, grams }) => ({
      name,
      kind,
      amount: (grams * taken) / built,
      entry,
    }))
  }
  if (entry.amount === null) return 'no-amount'
  if (asksForBuild(entry.name)) return 'build-unsaid'
  if (entry.hydrationPercent === null) return 'hydration-unsaid'
  const amount = worthOf(entry.amount)
  if (amount === null) return 'percent-of-which-flour'
  const flour = amount / (1 + entry.hydrationPercent / 100)
  return [
    { name: flourOf(entry.name, flours), kind: 'flour', amount: flour, entry },
    { name: 'Water', kind: 'water', amount: amount - flour, entry },
  ]
}

/** The flour a preferment is made of: what its name says, else the flour there is most of. */
function flourOf(name: string, flours: readonly Part[]): string {
  const grain = grainOfPreferment(headOfName(name))
  const listed = grain ? flours.find((one) => grain.listed.test(one.name)) : null
  if (grain) return listed?.name ?? grain.called
  const [most] = [...flours].sort((one, other) => other.amount - one.amount)
  return most?.name ?? 'Flour'
}
