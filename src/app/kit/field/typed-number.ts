import { type NumberTrouble, readNumber } from '@/core/units/read-number.ts'

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

/** What keeps a text from being a number, and the mend. */
export function typedNumberText(
  text: string,
  trouble: Extract<TypedNumber, { ok: false }>,
): string {
  switch (trouble.reason) {
    case 'thousands-or-decimals':
    case 'two-separators':
      return `“${text.trim()}” can be read two ways. Write thousands without a mark, and one point or comma before decimals.`
    case 'fraction':
      return 'Write a fraction as a decimal number, such as 0.5.'
    case 'range':
      return 'Write one number, not a range.'
    case 'unknown-unit':
      return `“${trouble.unit}” is not the unit here. Write the number alone.`
    case 'too-small':
      return `The least is ${trouble.least}.`
    case 'too-large':
      return `The most is ${trouble.most}.`
    default:
      return 'This is not a number. Write digits, such as 66 or 66.5.'
  }
}
