import type { LineTrouble } from './line-trouble.ts'
import { namesSeveral } from './several-in-line.ts'
import { spoons } from './spoons.ts'
import { fractionOfUnit, percentAmount, readAmount } from './stated-amount.ts'
import { wholeAmount } from './whole-amount.ts'

/** What was understood of one pasted line, or why it was not. */
export type ReadAmount =
  | {
      ok: true
      name: string
      grams: number
      percent: null
      fromVolume: boolean
      /** A percent that stands beside the weight. */
      besidePercent: number | null
    }
  | { ok: true; name: string; grams: null; percent: number; fromVolume: false }
  | { ok: false; reason: LineTrouble; name: string }

const bareNumber = /\d/u
const powerOfTen = /\d\s*e\s*[+-]?\d/iu
/** What may stand before a line of a list; a dash right before a figure is a minus. */
const bullets = /^(?:[\s*\u2022\u00b7]|\p{Pd}(?![\d.,]))+/u
const minus = /(?:^|\s)[\p{Pd}\u2212]$/u
const rangeOrFraction =
  /(?:\d\s*[/\u2044]\s*\d)|[\u00bc-\u00be\u2150-\u215e]|(?:\d\s*(?:g|kg|ml|%|oz|lb)?\s*(?:-|\u2013|\u2014|to)\s*\d)/iu
/** A range or fraction right before the amount itself, rather than in the name ("T55/65"). */
const touches =
  /(?:\d\s*(?:g|kg|ml|%|oz|lb)?\s*(?:[-/\u2044\u2013\u2014]|to)\s*|[\u00bc-\u00be\u2150-\u215e]\s*)$/iu
const ofEach = /(?<!\p{L})(?:each|apiece)(?!\p{L})/iu
/** A percent that tells of the thing itself, not of the dough: "82 % fat". */
const ofItself = /%\s*(?:fat|protein|ash|moisture|cocoa|solids|hydration)/iu
const pourable = /water|milk|cream|yog|whey|juice|beer/iu

/**
 * One line of a pasted formula: one ingredient, its amount with its unit (g, kg, oz, lb, ml, l or %) before or after the
 * name. Volumes are taken for water and thin liquids at 1 g/mL only; cups, spoons and counts are refused, since they weigh
 * differently in every kitchen; a fraction, a range, a number that can be read two ways and a second ingredient are refused
 * rather than guessed.
 */
export function readLine(line: string): ReadAmount {
  const text = line.replace(bullets, '').trim()
  const mass = wholeAmount(text)
  const anyPercent = percentAmount.exec(text)
  const percent = mass ? null : anyPercent
  const rest = mass?.rest ?? (percent ? text.replace(percent[0], ' ') : text)
  const name = nameIn(rest.replace(percentAmount, ' '))
  const refuse = (reason: LineTrouble): ReadAmount => ({ ok: false, reason, name })
  const found = mass?.ok ? mass.before : percent ? text.slice(0, percent.index) : null
  if (fractionOfUnit.test(text)) return refuse('fraction')
  const isPart = found === null ? !mass : touches.test(found.slice(-8))
  if (isPart && rangeOrFraction.test(text)) {
    if (found === null && spoons.test(text)) return refuse('cups-and-spoons')
    return refuse(/[/\u2044\u00bc-\u00be\u2150-\u215e]/u.test(text) ? 'fraction' : 'range')
  }
  if (mass && !mass.ok) return refuse(mass.reason)
  if (found === null) {
    if (spoons.test(text)) return refuse('cups-and-spoons')
    if (powerOfTen.test(text)) return refuse('not-a-number')
    return refuse(bareNumber.test(text) ? 'pieces-not-weighed' : 'no-amount')
  }
  if (minus.test(found)) return refuse('too-small')
  if (namesSeveral(text)) return refuse('several-amounts')
  if (mass && ofEach.test(text)) return refuse('of-how-many')
  const read = readAmount(percent?.[1] ?? '0')
  if (!read.ok) return refuse(read.reason)
  if (name === '') return refuse('no-name')
  if (!mass) return { ok: true, name, grams: null, percent: read.grams, fromVolume: false }
  const { grams, fromVolume } = mass
  if (fromVolume && !pourable.test(name)) return refuse('volume-of-no-water')
  if (grams > 1e6) return refuse('too-large')
  const beside =
    anyPercent?.[1] === undefined || ofItself.test(text) ? null : readAmount(anyPercent[1])
  const besidePercent = beside?.ok ? beside.grams : null
  return { ok: true, name, grams, percent: null, fromVolume, besidePercent }
}

function nameIn(text: string): string {
  return text
    .replace(/\([^)]*%[^)]*\)|\(\s*\)/gu, ' ')
    .replace(/^[\s:;,=./|~+\p{Pd}]+|[\s:;,=./|~+\p{Pd}]+$/gu, '')
    .replace(/^of\s+/iu, '')
    .replace(/\s+/gu, ' ')
    .trim()
}
