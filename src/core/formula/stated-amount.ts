import { gramsFrom, type MassUnit } from '@/core/units/mass.ts'
import { massSpellings } from '@/core/units/mass-spellings.ts'
import { readNumber } from '@/core/units/read-number.ts'
import type { LineTrouble } from './line-trouble.ts'

/** One amount as it stands in a line: from where to where, how many times, its digits and its unit. */
export interface StatedAmount {
  from: number
  to: number
  times: string | null
  digits: string
  unit: MassUnit
}

const units = Object.keys(massSpellings)
  .sort((a, b) => b.length - a.length)
  .map((unit) => unit.replaceAll('.', '\\.'))
  .join('|')
/** A number that stands by itself; the number of a type of flour ("tipo 1 500 g") is none of its amount. */
const alone = String.raw`(?<![\p{L}\d.,]|(?<!\p{L})(?:type|typ|tipo|t|w|no\.?)\s)`
const digits = String.raw`\d+(?:[ \u00a0\u2009\u202f]\d{3}(?!\d))*(?:[.,]\d+)*|[.,]\d+`
const times = String.raw`[x\u00d7*]`
const mass = String.raw`${alone}(?:(${digits})\s*${times}\s*)?(${digits})\s*(${units})(?![\p{L}\d])(?:\s*${times}\s*(${digits})(?![\p{L}\d.,]|\s*(?:${units})(?!\p{L})))?`
const twoReadings = /^[1-9]\d{0,2}[.,]\d{3}$/u

/** A fraction of a unit, such as "2 1/2 oz", "½ lb" or "½ x 250 g". */
export const fractionOfUnit = new RegExp(
  String.raw`(?:\d\s*[/\u2044]\s*\d+|[\u00bc-\u00be\u2150-\u215e])\s*(?:${times}\s*(?:${digits})\s*)?(?:${units})(?![\p{L}\d])`,
  'iu',
)
export const percentAmount = new RegExp(`${alone}(${digits})\\s*(%)`, 'iu')

/** Every amount with a unit of mass or volume, in the order of the line. */
export function statedAmounts(text: string): StatedAmount[] {
  return [...text.matchAll(new RegExp(mass, 'giu'))].map((found) => ({
    from: found.index,
    to: found.index + found[0].length,
    times: found[1] ?? found[4] ?? null,
    digits: found[2] ?? '',
    unit: massSpellings[(found[3] ?? '').toLowerCase()] ?? 'g',
  }))
}

/** A stated amount in grams, or why it is none: its number, or how many times it is meant, cannot be read. */
export function gramsStated({ times: count, digits: number, unit }: StatedAmount): Grams {
  if (twoReadings.test(number) && !unitOfThousand(unit)) return refused('two-readings')
  const [each, many] = [readAmount(number), readAmount(count ?? '1')]
  if (!each.ok) return each
  return many.ok ? { ok: true, grams: many.grams * gramsFrom(each.grams, unit) } : many
}

export type Grams = { ok: true; grams: number } | { ok: false; reason: LineTrouble }

/** The value of digits that stand in a line, at least 0. */
export function readAmount(number: string): Grams {
  const read = readNumber(number, { least: 0, most: 1e6 })
  if (read.ok) return { ok: true, grams: read.value }
  const known: LineTrouble[] = ['two-separators', 'too-small', 'too-large']
  return refused(known.find((one) => one === read.reason) ?? 'not-a-number')
}

/** Thousands of it would be past the tonne that a line may say, so that three figures behind a mark are decimals. */
const unitOfThousand = (unit: MassUnit) => unit === 'kg' || unit === 'l'

const refused = (reason: LineTrouble): Grams => ({ ok: false, reason })
