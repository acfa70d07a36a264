import { type NumberTrouble, readNumber } from './read-number.ts'

export type TypedNumber =
  | { ok: true; value: number | null }
  | Exclude<NumberTrouble, { reason: 'empty' }>
  | { ok: false; reason: 'thousands-or-decimals' }

const unclear = /^[-−+]?[1-9]\d{0,2},\d{3}(?!\d)/u

/**
 * Reads what a person typed into a number field, as `readNumber` does, with the field's own unit allowed behind it;
 * nothing typed is null. "1,250" is refused as well: a thousand and more to some readers, one and a quarter to others.
 */
export function typedNumber(text: string, unit = ''): TypedNumber {
  if (unclear.test(text.trim())) return { ok: false, reason: 'thousands-or-decimals' }
  const whole = unit.toLowerCase()
  const read = readNumber(text, { units: [whole, whole.split(' ')[0] ?? ''].filter(Boolean) })
  if (read.ok) return { ok: true, value: read.value }
  return read.reason === 'empty' ? { ok: true, value: null } : read
}
