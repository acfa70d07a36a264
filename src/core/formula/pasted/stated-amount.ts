import { gramsFrom, type MassUnit } from '@/core/units/mass.ts'
import { massSpellings } from '@/core/units/mass-spellings.ts'
import { readNumber } from '@/core/units/read-number.ts'
import {
  fractionPattern,
  fractionValue,
  withoutThousandsMarks,
} from '@/core/units/written-number.ts'
import type { LineTrouble } from './line-trouble.ts'

/** One amount as it stands in a line: from where to where, how many times, its digits and its unit. */
export interface StatedAmount {
  from: number
  to: number
  times: string | null
  digits: string
  unit: MassUnit
  /** What stands right before it. */
  before: string
}

const units = Object.keys(massSpellings)
  .sort((a, b) => b.length - a.length)
  .map((unit) => unit.replaceAll('.', '\\.'))
  .join('|')
/** A number that stands by itself; the number of a type of flour ("tipo 1 500 g", "T55/65") is none of its amount. */
const alone = String.raw`(?<![\p{L}\d.,/\u2044'\u2019]|(?<!\p{L})(?:type|typ|tipo|t|w|n[o°]?\.?|nr\.?)\s)`
/** Thousands stand in groups of three behind one or two figures; three figures before a gap are a type of flour. */
const grouped = String.raw`[1-9]\d?(?:[ \u00a0\u2009\u202f]\d{3})+(?!\d)(?:[.,]\d+)?|\d{1,3}(?:['\u2019]\d{3})+(?!\d)(?:[.,]\d+)?`
const digits = String.raw`${grouped}|${fractionPattern}|\d+(?:[.,]\d+)*|[.,]\d+`
const times = String.raw`[x\u00d7*]`
const unitEnd = String.raw`(?![\p{L}\d])`
const mass = String.raw`${alone}(?:(${digits})\s*${times}\s*)?(${digits})\s*(${units})${unitEnd}(?:\s*${times}\s*(${digits})(?![\p{L}\d.,]|\s*(?:${units})(?!\p{L})))?`
const twoReadings = /^[1-9]\d{0,2}[.,]\d{3}$/u
export const percentAmount = new RegExp(`${alone}(${digits})\\s*(%)`, 'iu')

/** Two amounts of one unit that is written once: "680 + 70 g". */
const unitOnce = new RegExp(
  String.raw`${alone}(${digits})(\s*(?:\+|plus)\s*)(${digits})\s*(${units})${unitEnd}`,
  'iu',
)

/** A line with the unit written at each amount of a sum: "680 + 70 g" as "680 g + 70 g". */
export function withUnitAtEach(text: string): string {
  const found = unitOnce.exec(text)
  if (!found) return text
  const [all, one = '', joint = '', other = '', unit = ''] = found
  const spelled = `${one} ${unit}${joint}${other} ${unit}`
  return text.slice(0, found.index) + spelled + text.slice(found.index + all.length)
}

/** Every amount with a unit of mass or volume, in the order of the line. */
export function statedAmounts(text: string): StatedAmount[] {
  return [...text.matchAll(new RegExp(mass, 'giu'))].map((found) => ({
    from: found.index,
    to: found.index + found[0].length,
    times: found[1] ?? found[4] ?? null,
    digits: found[2] ?? '',
    unit: massSpellings[(found[3] ?? '').toLowerCase()] ?? 'g',
    before: text.slice(0, found.index),
  }))
}

/** Behind these a small number and three figures may be a type of flour and its weight: "farine 55 500 g". */
const typed: readonly [RegExp, RegExp][] = [
  [/farin[ae][\p{L}\s']*$/iu, /^[12] \d{3}$/u],
  [/(?:flour|farin[ae]|mehl)[\p{L}\s']*$/iu, /^(?:45|55|65|80) (?!000)\d{3}$/u],
]

/** A stated amount in grams, or why it is none: its number, or how many times it is meant, cannot be read. */
export function gramsStated({ times: count, digits: number, unit, before }: StatedAmount): Grams {
  const plain = number.replace(/\s/gu, ' ')
  if (twoReadings.test(number) && !unitOfThousand(unit)) return refused('two-readings')
  if (typed.some(([name, figures]) => name.test(before) && figures.test(plain)))
    return refused('two-readings')
  const [each, many] = [readAmount(number), readAmount(count ?? '1')]
  if (!each.ok) return each
  return many.ok ? { ok: true, grams: many.grams * gramsFrom(each.grams, unit) } : many
}

export type Grams = { ok: true; grams: number } | { ok: false; reason: LineTrouble }

/** The value of digits that stand in a line, at least 0. */
export function readAmount(number: string): Grams {
  const text = number.trim()
  const fraction = fractionValue(text)
  if (fraction !== null) return { ok: true, grams: fraction }
  const read = readNumber(withoutThousandsMarks(text), { least: 0, most: 1e6 })
  if (read.ok) return { ok: true, grams: read.value }
  const known: LineTrouble[] = ['two-separators', 'too-small', 'too-large']
  return refused(known.find((one) => one === read.reason) ?? 'not-a-number')
}

/** Thousands of it would be past the tonne that a line may say, so that three figures behind a mark are decimals. */
const unitOfThousand = (unit: MassUnit) => unit === 'kg' || unit === 'l'

const refused = (reason: LineTrouble): Grams => ({ ok: false, reason })
