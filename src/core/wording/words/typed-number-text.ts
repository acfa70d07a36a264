import type { TypedNumber } from '@/core/units/typed-number.ts'

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
