export type NumberTrouble =
  | { ok: false; reason: 'empty' | 'not-a-number' | 'two-separators' | 'fraction' | 'range' }
  | { ok: false; reason: 'unknown-unit'; unit: string }
  | { ok: false; reason: 'too-small'; least: number }
  | { ok: false; reason: 'too-large'; most: number }

export type ReadNumber = { ok: true; value: number; unit: string | null } | NumberTrouble

export interface NumberBounds {
  /** Bounds the value must lie in, both included. Nothing past a thousand million is ever taken. */
  least?: number
  most?: number
  /** Units that may stand behind the number, in lower case; none when left out. */
  units?: readonly string[]
}

const largest = 1e9
const spaces = /[\s\u00a0\u2007\u2009\u200a\u202f]+/gu
const number = /^([+-]?)(\d+(?: \d{3})*|)(?:([.,])(\d*))?(e[+-]?\d+)?(?![\d.,])(.*)$/u

/**
 * A number as people type it: decimal point or comma, thin or plain spaces between thousands, a unit behind it, the
 * true minus sign. A single comma is always the decimal comma; two separators are refused rather than guessed, and so
 * are fractions ("1/2", "½") and ranges ("60-65"), each by its own reason. Emoji, words and NaN are no numbers.
 */
export function readNumber(text: string, bounds: NumberBounds = {}): ReadNumber {
  const plain = text
    .replace(spaces, ' ')
    .trim()
    .replace(/^\u2212/u, '-')
    .toLowerCase()
  if (plain === '') return { ok: false, reason: 'empty' }
  if (/[\u00bc-\u00be\u2150-\u215e]|\d ?[/\u2044] ?\d/u.test(plain))
    return { ok: false, reason: 'fraction' }
  if (/\d ?%?\s*(?:-|\u2013|\u2014|\.\.|to|bis) ?\d/u.test(plain) && !/e-\d/u.test(plain)) {
    return { ok: false, reason: 'range' }
  }
  if (/\d*[.,]\d*[.,]/u.test(plain)) return { ok: false, reason: 'two-separators' }
  const found = number.exec(plain)
  const [, sign = '', whole = '', , decimals = '', exponent = '', tail = ''] = found ?? []
  if (!found || whole + decimals === '') return { ok: false, reason: 'not-a-number' }
  const unit = tail.trim()
  const value = Number(`${sign}${whole.replaceAll(' ', '') || '0'}.${decimals || '0'}${exponent}`)
  const trouble = unitTrouble(unit, bounds.units ?? []) ?? boundsTrouble(value, bounds)
  return trouble ?? { ok: true, value: value === 0 ? 0 : value, unit: unit === '' ? null : unit }
}

function unitTrouble(unit: string, known: readonly string[]): NumberTrouble | null {
  if (unit === '' || known.includes(unit)) return null
  const looksLikeUnit = /^[%°\p{L}][%°\p{L}. /]*$/u.test(unit)
  return looksLikeUnit
    ? { ok: false, reason: 'unknown-unit', unit }
    : { ok: false, reason: 'not-a-number' }
}

function boundsTrouble(value: number, { least = -largest, most = largest }: NumberBounds) {
  if (value > Math.min(most, largest)) return tooLarge(Math.min(most, largest))
  if (value < Math.max(least, -largest)) return tooSmall(Math.max(least, -largest))
  return null
}

const tooLarge = (most: number): NumberTrouble => ({ ok: false, reason: 'too-large', most })
const tooSmall = (least: number): NumberTrouble => ({ ok: false, reason: 'too-small', least })
