import { gramsFrom } from '@/core/units/mass.ts'
import { massSpellings } from '@/core/units/mass-spellings.ts'
import { readNumber } from '@/core/units/read-number.ts'

export type LineTrouble =
  | 'no-amount'
  | 'no-name'
  | 'not-a-number'
  | 'fraction'
  | 'range'
  | 'two-separators'
  | 'too-small'
  | 'too-large'
  | 'volume-of-no-water'
  | 'cups-and-spoons'
  | 'pieces-not-weighed'

/** What was understood of one pasted line, or why it was not. */
export type ReadAmount =
  | { ok: true; name: string; grams: number; percent: null; fromVolume: boolean }
  | { ok: true; name: string; grams: null; percent: number; fromVolume: false }
  | { ok: false; reason: LineTrouble; name: string }

const spoons =
  /(?:^|[\s\d])(?:cups?|tbsp\.?|tbs\.?|tablespoons?|tsp\.?|teaspoons?|pinch(?:es)?|dash(?:es)?|handfuls?|sachets?|packets?|sticks?)(?![\p{L}])/iu
const units = Object.keys(massSpellings)
  .sort((a, b) => b.length - a.length)
  .map((unit) => unit.replaceAll('.', '\\.'))
  .join('|')
const digits = String.raw`\d+(?:[ \u00a0\u2009\u202f]\d{3})*(?:[.,]\d+)*|[.,]\d+`
const massAmount = new RegExp(`(?<![\\p{L}\\d.,])(${digits})\\s*(${units})(?![\\p{L}\\d])`, 'iu')
const percentAmount = new RegExp(`(?<![\\p{L}\\d.,])(${digits})\\s*(%)`, 'iu')
const bareNumber = /\d/u
const powerOfTen = /\d\s*e\s*[+-]?\d/iu
/** What may stand before a line of a list; a dash right before a figure is a minus. */
const bullets = /^(?:[\s*\u2022\u00b7]|\p{Pd}(?![\d.,]))+/u
const minus = /(?:^|\s)[\p{Pd}\u2212]$/u
const rangeOrFraction =
  /(?:\d\s*[/\u2044]\s*\d)|[\u00bc-\u00be\u2150-\u215e]|(?:\d\s*(?:g|kg|ml|%|oz|lb)?\s*(?:-|\u2013|\u2014|to)\s*\d)/iu
const pourable = /water|milk|cream|yog|whey|juice|beer/iu

/**
 * One line of a pasted formula: an amount with its unit (g, kg, oz, lb, ml, l or %) before or after the name. Volumes are
 * taken for water and thin liquids at 1 g/mL only; cups, spoons and counts are refused, since they weigh differently in
 * every kitchen; a fraction or a range is refused rather than guessed.
 */
export function readLine(line: string): ReadAmount {
  const text = line.replace(bullets, '').trim()
  const found = massAmount.exec(text) ?? percentAmount.exec(text)
  const name = nameIn((found ? text.replace(found[0], ' ') : text).replace(percentAmount, ' '))
  const refuse = (reason: LineTrouble): ReadAmount => ({ ok: false, reason, name })
  if (rangeOrFraction.test(text) && (!found || overlaps(text, found))) {
    if (!found && spoons.test(text)) return refuse('cups-and-spoons')
    return refuse(/[/\u2044\u00bc-\u00be\u2150-\u215e]/u.test(text) ? 'fraction' : 'range')
  }
  if (!found) {
    if (spoons.test(text)) return refuse('cups-and-spoons')
    if (powerOfTen.test(text)) return refuse('not-a-number')
    return refuse(bareNumber.test(text) ? 'pieces-not-weighed' : 'no-amount')
  }
  if (minus.test(text.slice(0, found.index))) return refuse('too-small')
  const read = readNumber(found[1] ?? '', { least: 0, most: 1e6 })
  if (!read.ok) return refuse(asTrouble(read.reason))
  if (name === '') return refuse('no-name')
  const unit = (found[2] ?? '').toLowerCase()
  if (unit === '%') return { ok: true, name, grams: null, percent: read.value, fromVolume: false }
  const massUnit = massSpellings[unit] ?? 'g'
  const fromVolume = massUnit === 'ml' || massUnit === 'l'
  if (fromVolume && !pourable.test(name)) return refuse('volume-of-no-water')
  const grams = gramsFrom(read.value, massUnit)
  return grams > 1e6 ? refuse('too-large') : { ok: true, name, grams, percent: null, fromVolume }
}

/** Whether a range or fraction touches the amount itself, rather than standing in the name ("T55/65"). */
function overlaps(text: string, found: RegExpExecArray): boolean {
  const before = text.slice(Math.max(0, found.index - 8), found.index)
  return /(?:\d\s*(?:g|kg|ml|%|oz|lb)?\s*(?:[-/\u2044\u2013\u2014]|to)\s*|[\u00bc-\u00be\u2150-\u215e]\s*)$/iu.test(
    before,
  )
}

function asTrouble(reason: string): LineTrouble {
  const known: LineTrouble[] = ['fraction', 'range', 'two-separators', 'too-small', 'too-large']
  return known.find((one) => one === reason) ?? 'not-a-number'
}

function nameIn(text: string): string {
  return text
    .replace(/\([^)]*%[^)]*\)|\(\s*\)/gu, ' ')
    .replace(/^[\s:;,=.\p{Pd}]+|[\s:;,=\p{Pd}]+$/gu, '')
    .replace(/^of\s+/iu, '')
    .replace(/\s+/gu, ' ')
    .trim()
}
