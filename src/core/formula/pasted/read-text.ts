import type { IngredientKind } from '@/core/formula/formula-record.ts'
import { isPreferment, knownKindOfName, saidYeastForm } from '@/core/formula/kind-of-name.ts'
import { rowsOf, type TextRow } from './columns.ts'
import { type Heading, headingOf } from './headings.ts'
import { purposeOf, type Stated } from './line-purpose.ts'
import { mendsOf } from './mends.ts'
import type { Entry, PastedText, ReadRow, Section } from './pasted-text.ts'
import { hydrationSaidIn, prefermentIn } from './preferment-line.ts'
import { ingredientsIn } from './split-line.ts'
import { percentAmount, statedAmounts } from './stated-amount.ts'
import { readLine, withoutBullet } from './text-line.ts'
import { wholeAmount } from './whole-amount.ts'

/**
 * A pasted text line by line: headings open parts, rulings, titles and method are set aside, totals and yields are kept to be
 * checked, and each ingredient is read with its amount. Nothing is added up here.
 */
export function readText(text: string, kinds: ReadonlyMap<string, IngredientKind>): PastedText {
  const { rows: all, severalColumns } = rowsOf(text)
  const rows = all.filter(({ text: one }) => one !== '')
  const dough: Section = { at: 0, kind: 'final', name: '', statedGrams: null }
  const sections = [dough]
  const stated: { stated: Stated; section: number }[] = []
  let current = dough
  let last = 0
  const laterDough = (line: number) =>
    rows.some((row) => row.line > line && ['final', 'overall'].includes(openedBy(row)?.kind ?? ''))
  const open = (heading: Heading, statedGrams: number | null = null): Section => {
    const known = sections.find((one) => one.kind === heading.kind && one.name === heading.name)
    if (known) return known
    const made = { ...heading, at: sections.length, statedGrams }
    sections.push(made)
    return made
  }
  const read = rows.map((row, index): ReadRow => {
    const gap = row.line > last + 1 && last > 0
    last = row.line
    if (gap && current.kind === 'preferment' && !laterDough(row.line - 1)) current = dough
    const done = (...entries: Entry[]): ReadRow => ({ line: row.line, text: row.raw, entries })
    if (row.isHead) return done({ is: 'aside', why: 'heading', text: row.raw })
    const line = withoutBullet(row.text)
    const heading = openedBy(row)
    if (heading) {
      current = open(heading, gramsIn(line))
      return done({ is: 'aside', why: 'heading', text: row.raw })
    }
    const inline = row.under ? null : inlineHeading(line)
    const section = row.under ? open(row.under) : inline ? open(inline.heading) : current
    if (section.kind === 'aside') return done({ is: 'aside', why: 'topping', text: row.raw })
    if (section.kind === 'method' && !inline) return done(methodLine(line, row, rows))
    const rest = inline?.rest ?? line
    const built = wholeOf(rest, sections)
    if (built) return done({ ...built, section: section.at })
    const purpose = purposeOf(rest, { first: index === 0, others: rows.length - 1 })
    if (purpose.is === 'stated') {
      if (purpose.stated) stated.push({ stated: purpose.stated, section: section.at })
      return done({ is: 'aside', why: purpose.why, text: row.raw })
    }
    if (purpose.is === 'aside') return done({ is: 'aside', why: purpose.why, text: row.raw })
    const entries = entriesOf(rest, section.at, kinds)
    const ofFlour = entries.some((entry) => entry.is === 'ingredient' && entry.kind === 'flour')
    const hydration = ofFlour ? hydrationSaidIn(rest) : null
    // Beside a flour it is that of the dough.
    if (hydration !== null)
      stated.push({ stated: { of: 'hydration', percent: hydration }, section: section.at })
    return done(...entries)
  })
  return { rows: read, sections, stated, severalColumns }
}

/** The part of the formula that a line opens: it has no amount, or ends in a colon behind the amount of the whole. */
function openedBy(row: TextRow): Heading | null {
  if (row.isHead || row.under) return null
  const markdown = /^#+\s/u.test(row.raw)
  const line = withoutBullet(row.text)
  const endsOpen = /:\s*$/u.test(line) || markdown
  const cool = line.replace(/\d+(?:[.,]\d+)?\s*°\s*[CF]?/giu, ' ')
  const measured = statedAmounts(cool).length > 0 || percentAmount.test(cool)
  if (measured && !endsOpen) return null
  const name = measured ? (wholeAmount(cool)?.rest ?? cool).replace(percentAmount, ' ') : line
  const found = headingOf(name, endsOpen)
  if (!found) return null
  if (endsOpen || found.kind === 'method') return found
  if (isPreferment(line) && /(?<!\p{L})(?:all|ganze|gesamte|tout|tutt)/iu.test(line)) return null
  return found
}

const allOf =
  /^(?:all(?: of)?|the whole|entire|die ganze|der ganze|gesamte[rs]?|tout(?:e)?|tutt[oa])\s+(?:the |die |der |den |la |le |il |lo |l['’])?(.+)$/iu

/** "All of stage 1": the whole of a part under a heading of its own, by its name. */
function wholeOf(line: string, sections: readonly Section[]) {
  const name = (allOf.exec(line)?.[1] ?? '').trim().toLowerCase()
  const built = sections.find((one) => one.kind === 'preferment' && one.name.toLowerCase() === name)
  if (!built) return null
  const nothing = { hydrationPercent: null, build: [], besidePercent: null, mends: [] }
  return { is: 'preferment' as const, name: built.name, amount: null, ...nothing }
}

function gramsIn(line: string): number | null {
  const mass = wholeAmount(line)
  return mass?.ok ? mass.grams : null
}

/** "Poolish: 200 g flour, 200 g water": a part that stands in one line with its heading. */
function inlineHeading(line: string): { heading: Heading; rest: string } | null {
  const found = /^([^:\d]{2,40}):\s*(\S.*)$/u.exec(line)
  const heading = found ? headingOf(found[1] ?? '', false) : null
  if (!found || !heading) return null
  const rest = found[2] ?? ''
  const items = ingredientsIn(rest)
  const named = items.every((one) => readLine(one).name !== '')
  if (heading.kind === 'preferment' && (items.length < 2 || !named)) return null
  return named || heading.kind === 'method' || heading.kind === 'aside' ? { heading, rest } : null
}

/** A line of the method; one that weighs what no other line lists is asked about. */
function methodLine(line: string, row: TextRow, rows: readonly TextRow[]): Entry {
  const listed = rows.some((one) => one !== row && statedAmounts(one.text).length > 0)
  if (statedAmounts(line).length > 0 && !listed)
    return { is: 'question', why: 'in-a-sentence', name: line, kind: null, mends: [] }
  return { is: 'aside', why: 'method', text: row.raw }
}

const sentence =
  /^(?:mix|knead|add|stir|dissolve|combine|whisk|put|take|mélanger|pétrir|ajouter|mischen|kneten|den |die |das |alle |impastare|mescolare|aggiungere|unire|sciogliere)(?!\p{L})/iu

function entriesOf(
  line: string,
  section: number,
  kinds: ReadonlyMap<string, IngredientKind>,
): Entry[] {
  if (sentence.test(line))
    return [{ is: 'question', why: 'in-a-sentence', name: line, kind: null, mends: [] }]
  const whole = prefermentIn(line, section)
  if (whole?.is === 'preferment' && whole.build.length > 0) return [whole]
  const items = ingredientsIn(line)
  return items.map((item) => {
    const entry = entryOf(item, section, kinds)
    if (entry.is !== 'question' && entry.is !== 'preferment') return entry
    const mends = entry.mends.map((mend) => (items.length === 1 ? mend : line.replace(item, mend)))
    return { ...entry, mends }
  })
}

function entryOf(item: string, section: number, kinds: ReadonlyMap<string, IngredientKind>): Entry {
  const read = readLine(item)
  const preferment = kinds.has(read.name) ? null : prefermentIn(item, section)
  if (preferment) return preferment
  const { name } = read
  const kind = kinds.get(name) ?? knownKindOfName(name)
  if (!read.ok)
    return { is: 'question', why: read.reason, name, kind: null, mends: mendsOf(item, read.reason) }
  if (kind === null) return { is: 'question', why: 'unknown-kind', name, kind: 'other', mends: [] }
  const { fromVolume } = read
  const amount =
    read.grams === null
      ? { grams: null, percent: read.percent }
      : { grams: read.grams, percent: null }
  const besidePercent = read.grams === null ? null : read.besidePercent
  const yeastForm = kind === 'yeast' ? saidYeastForm(item) : null
  return { is: 'ingredient', name, kind, amount, besidePercent, fromVolume, yeastForm, section }
}
