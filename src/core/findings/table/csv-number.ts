const numberPattern = /^[+\-\u2212]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?$/

/**
 * A number as a spreadsheet writes it, with decimal point or comma, or null when the text is none. A thousands
 * separator is no number: nobody could tell 1.234 from 1234.
 */
export function csvNumber(text: string): number | null {
  if (!numberPattern.test(text)) return null
  const value = Number(text.replace(',', '.').replace('\u2212', '-'))
  return Number.isFinite(value) ? value : null
}
