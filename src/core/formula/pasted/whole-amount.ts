import type { MassUnit } from '@/core/units/mass.ts'
import type { LineTrouble } from './line-trouble.ts'
import { gramsStated, type StatedAmount, statedAmounts } from './stated-amount.ts'

/** All that a line says of its amount: in grams, whether by volume, and the line without it. */
export type WholeAmount =
  | { ok: true; grams: number; fromVolume: boolean; before: string; rest: string }
  | { ok: false; reason: LineTrouble; rest: string }

const inBrackets = /\(([^()]*)\)/gu
const about = /^\s*(?:about|approx\.?|approximately|circa|ca\.|or|[=~\u2248])?\s*/iu
const plus = /^\s*(?:\+|plus)\s*$/iu
const listed = /^(?:\s*,?\s*|\s+(?:and|&)\s+)$/iu
const again = /^\s*(?:[/=~\u2248]|or|oder|ou|o)\s*$/iu
const sumsTo = /^\s*=\s*$/u
const upTo = /^\s*(?:\p{Pd}|to|bis|à)\s*$/iu
const countOfBrackets = /(?:^|\s)[1-9]\d*\s*\($/u
const smaller: Partial<Record<MassUnit, MassUnit>> = { kg: 'g', lb: 'oz', l: 'ml' }
const volumes: ReadonlySet<MassUnit> = new Set<MassUnit>(['ml', 'cl', 'dl', 'l'])
/** How far two ways to say one amount may differ: an ounce is often written as 30 g (common practice, no source). */
const sameWithin = 0.1

/**
 * The amount of one line, put together: parts are added ("2 lb 2 oz", "350 g + 25 g"), a number of times multiplies, and
 * the same amount in another unit ("500 g (17.6 oz)", "500 g / 17.6 oz") counts once. Two amounts that are neither are
 * refused. Null where no amount with a unit of mass or volume stands.
 */
export function wholeAmount(text: string): WholeAmount | null {
  const asides = [...text.matchAll(inBrackets)]
    .map((found) => ({
      at: found.index,
      all: found[0],
      inner: (found[1] ?? '').replace(about, ''),
    }))
    .filter(({ inner }) => statedAmounts(inner).length > 0)
  const bare = asides.reduce((left, { at, all }) => blanked(left, at, at + all.length), text)
  const counted = asides.some(({ at }) => countOfBrackets.test(text.slice(0, at + 1)))
  if (counted) return { ok: false, reason: 'of-how-many', rest: bare }
  if (asides.length === 0 || statedAmounts(bare).length === 0) return amountInRow(text)
  const said = amountInRow(bare)
  if (!said?.ok) return said
  const agree = asides.every(({ inner }) => {
    const aside = amountInRow(inner)
    return aside?.ok && aside.rest.trim() === '' && isSame(aside.grams, said.grams)
  })
  return agree ? said : { ok: false, reason: 'several-amounts', rest: said.rest }
}

/** The amounts of a text as one: they stand in a row, with nothing but what joins them between. */
function amountInRow(text: string): WholeAmount | null {
  const row = statedAmounts(text)
  const [first] = row
  const last = row.at(-1)
  if (!first || !last) return null
  const before = text.slice(0, first.from)
  const rest = `${before} ${text.slice(last.to)}`
  const sums: number[] = [0]
  for (const [at, amount] of row.entries()) {
    const read = gramsStated(amount)
    if (!read.ok) return { ...read, rest }
    const joint = jointOf(text, row[at - 1], amount)
    if (joint === 'range' || joint === 'several-amounts') return { ok: false, reason: joint, rest }
    if (joint === 'again') sums.push(read.grams)
    else sums.push((sums.pop() ?? 0) + read.grams)
  }
  const [grams = 0, ...others] = sums
  if (!others.every((other) => isSame(other, grams)))
    return { ok: false, reason: 'several-amounts', rest }
  const fromVolume = row.every(({ unit }) => volumes.has(unit))
  return { ok: true, grams, fromVolume, before, rest }
}

type Joint = 'first' | 'added' | 'again' | 'range' | 'several-amounts'

function jointOf(text: string, last: StatedAmount | undefined, next: StatedAmount): Joint {
  if (!last) return 'first'
  const between = text.slice(last.to, next.from)
  if (sumsTo.test(between)) return 'again'
  if (again.test(between)) return last.unit === next.unit ? 'several-amounts' : 'again'
  if (upTo.test(between)) return 'range'
  const once = last.times === null && next.times === null
  if (!once) return 'several-amounts'
  if (plus.test(between)) return 'added'
  if (!listed.test(between)) return 'several-amounts'
  if (last.unit === next.unit) return 'several-amounts'
  return smaller[last.unit] === next.unit ? 'added' : 'again'
}

const isSame = (one: number, other: number) => Math.abs(one - other) <= sameWithin * other

const blanked = (text: string, from: number, to: number) =>
  `${text.slice(0, from)}${' '.repeat(to - from)}${text.slice(to)}`
