import { manner } from './manner.ts'
import { gramsFrom } from './mass.ts'
import { massSpellings } from './mass-spellings.ts'
import { type NumberTrouble, readNumber } from './read-number.ts'
import { secondsFrom, timeSpellings, typedDurationSeconds } from './typed-duration.ts'
import { fractionPattern, fractionValue, withoutThousandsMarks } from './written-number.ts'

export type TypedNumber =
  | { ok: true; value: number | null }
  | Exclude<NumberTrouble, { reason: 'empty' }>
  | { ok: false; reason: 'thousands-or-decimals' }

/** A thousand and more to some readers, one and a bit to others: the mark that is not the person's own for decimals. */
const unclear = {
  point: /^[-−+]?[1-9]\d{0,2},\d{3}(?!\d)/u,
  comma: /^[-−+]?[1-9]\d{0,2}\.\d{3}(?!\d)/u,
} as const
const unclearMark = () => unclear[manner().decimal]
const fraction = new RegExp(`^(${fractionPattern})\\s*(.*)$`, 'u')
const marked = /^(\d{1,3}(?:['’.,]\d{3})+(?:[.,]\d+)?)(.*)$/u

/**
 * Reads what a person typed into a number field, as `readNumber` does, with the field's own unit allowed behind it;
 * nothing typed is null. A weight may be typed in any unit of weight ("5 kg", "½ oz", "2 dl" of water) and a time in any of
 * time ("14h", "1 h 20 min"); fractions ("1 1/2") and thousands between apostrophes are read. "1,250" is refused (with the
 * decimal comma "1.250"): a thousand and more to some readers, one and a quarter to others.
 */
export function typedNumber(text: string, unit = ''): TypedNumber {
  const typed = text.trim()
  if (unclearMark().test(typed) && !isMarked(typed))
    return { ok: false, reason: 'thousands-or-decimals' }
  const whole = unit.toLowerCase()
  const own = [whole, whole.split(' ')[0] ?? ''].filter(Boolean)
  const time = timeSpellings[own[0] ?? '']
  const seconds = time ? typedDurationSeconds(typed) : null
  if (time && seconds !== null) return { ok: true, value: tidy(seconds / secondsFrom(1, time)) }
  const others = massSpellings[own[0] ?? ''] ? Object.keys(massSpellings) : []
  const read = readNumber(plainly(typed), { units: [...own, ...others] })
  if (!read.ok) return read.reason === 'empty' ? { ok: true, value: null } : read
  return { ok: true, value: inUnit(read.value, read.unit, own[0] ?? '') }
}

const isMarked = (text: string) => {
  const digits = marked.exec(text)?.[1]
  return digits !== undefined && withoutThousandsMarks(digits) !== digits
}

/** A fraction as a decimal and thousands without marks, with whatever stands behind. */
function plainly(text: string): string {
  const parts = fraction.exec(text)
  const value = parts ? fractionValue((parts[1] ?? '').trim()) : null
  if (parts && value !== null) return `${value} ${parts[2] ?? ''}`
  const [all, digits, rest = ''] = marked.exec(text) ?? []
  return all !== undefined && digits !== undefined ? withoutThousandsMarks(digits) + rest : text
}

/** A typed weight in the unit of its field. */
function inUnit(value: number, typed: string | null, own: string): number {
  const [from, to] = [massSpellings[typed ?? ''], massSpellings[own]]
  if (!from || !to || from === to) return value
  return tidy(gramsFrom(value, from) / gramsFrom(1, to))
}

/** Without the dust of a conversion: nine figures, finer than any kitchen's scale or clock. */
const tidy = (value: number) => Number(value.toPrecision(9))
