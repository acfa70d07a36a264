import { csvNumber } from './csv-number.ts'

/** What spreadsheets and statistics programs write where there is no value. */
const missing = new Set([
  '',
  '-',
  '–',
  '—',
  '.',
  '?',
  'na',
  'n/a',
  '#n/a',
  'nan',
  'null',
  'none',
  'missing',
])

/** Whether a cell stands for no value: blank, a dash, NA, n/a and the like, in any case. */
export function isMissing(cell: string): boolean {
  return cell.length < 8 && missing.has(cell.toLowerCase())
}

/** Numbers past this, either way from nought, cannot be squared and added up without loss. */
const most = 1e15

/** Whether a number can be reckoned with: nought, or between 1e-15 and 1e15 in size. */
export function inReach(value: number): boolean {
  const size = Math.abs(value)
  return value === 0 || (size <= most && size >= 1 / most)
}

/** A number and the unit written behind it: 65 %, 65%, 65C, 65 °C, 2,5 g/kg; null when the text is none. */
export function numberWithUnit(
  text: string,
): { value: number; number: string; unit: string } | null {
  const match = /^([+\-\u2212]?\d+(?:[.,]\d+)?)\s*([^\d\s.,][^\d.,]{0,11})?$/.exec(text)
  const number = match?.[1]
  const value = number === undefined ? null : csvNumber(number)
  if (number === undefined || value === null || !inReach(value)) return null
  return { value, number, unit: match?.[2] ?? '' }
}

/**
 * The one unit of several texts that all are numbers; texts without any go with those that have it. Null where a text is no
 * number or two units stand side by side.
 */
export function unitOfAll(texts: readonly string[]): { unit: string; values: number[] } | null {
  let unit = ''
  const values: number[] = []
  for (const text of texts) {
    const read = numberWithUnit(text)
    if (!read || (unit !== '' && read.unit !== '' && read.unit !== unit)) return null
    unit ||= read.unit
    values.push(read.value)
  }
  return { unit, values }
}
