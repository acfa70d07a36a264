const vulgar: Readonly<Record<string, number>> = {
  '\u00bc': 1 / 4,
  '\u00bd': 1 / 2,
  '\u00be': 3 / 4,
  '\u2150': 1 / 7,
  '\u2151': 1 / 9,
  '\u2152': 1 / 10,
  '\u2153': 1 / 3,
  '\u2154': 2 / 3,
  '\u2155': 1 / 5,
  '\u2156': 2 / 5,
  '\u2157': 3 / 5,
  '\u2158': 4 / 5,
  '\u2159': 1 / 6,
  '\u215a': 5 / 6,
  '\u215b': 1 / 8,
  '\u215c': 3 / 8,
  '\u215d': 5 / 8,
  '\u215e': 7 / 8,
}
const signs = '\u00bc-\u00be\u2150-\u215e'
const gap = '[ \\u00a0\\u2007\\u2009\\u202f]'

/** A fraction with or without whole ones before it, such as 1/2, ½, 1 1/2, 1½. */
export const fractionPattern = String.raw`(?:\d+${gap}+)?\d+${gap}?[/\u2044]${gap}?\d+|(?:\d+${gap}?)?[${signs}]`

const slashed = new RegExp(String.raw`^(?:(\d+)${gap}+)?(\d+)${gap}?[/\u2044]${gap}?(\d+)$`, 'u')
const signed = new RegExp(String.raw`^(\d*)${gap}?([${signs}])$`, 'u')

/**
 * The value of a fraction as a baker writes it ("1/2", "½", "1 1/2", "1½"); null where the text is none, or divides by
 * nought, or its part is no proper one ("1 5/2").
 */
export function fractionValue(text: string): number | null {
  const sign = signed.exec(text)
  if (sign) return Number(sign[1] || 0) + (vulgar[sign[2] ?? ''] ?? 0)
  const parts = slashed.exec(text)
  if (!parts) return null
  const [whole, over, under] = [parts[1], Number(parts[2]), Number(parts[3])]
  if (under === 0 || (whole !== undefined && over >= under)) return null
  return Number(whole ?? 0) + over / under
}

/** Thousands between apostrophes as written in Switzerland, or with both separators, which leaves one reading only. */
const apostrophes = /^\d{1,3}(?:['\u2019]\d{3})+(?:[.,]\d+)?$/u
const pointsThenComma = /^\d{1,3}(?:\.\d{3})+,\d+$/u
const commasThenPoint = /^\d{1,3}(?:,\d{3})+\.\d+$/u

/**
 * A number with marks between its thousands where they can be nothing else (1’250, 1.250,5, 1,250.5), with the decimal
 * point alone; every other text as it is.
 */
export function withoutThousandsMarks(text: string): string {
  if (apostrophes.test(text)) return text.replace(/['\u2019]/gu, '')
  if (pointsThenComma.test(text)) return text.replaceAll('.', '').replace(',', '.')
  return commasThenPoint.test(text) ? text.replaceAll(',', '') : text
}
