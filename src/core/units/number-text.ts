import { manner } from './manner.ts'

/** A number as people read it: fixed decimals, a true minus sign, no minus before zero, their own mark. Never called with NaN. */
export function decimalText(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new Error(`no number to write: ${value}`)
  const text = Math.abs(value).toFixed(decimals)
  return withOwnMark(value < 0 && Number(text) !== 0 ? `−${text}` : text)
}

/** A figure written with the point, with the person's decimal mark in its place. */
export function withOwnMark(figure: string): string {
  return manner().decimal === 'comma' ? figure.replace('.', ',') : figure
}

/** The same with its sign always written: differences. Zero has none. */
export function signedText(value: number, decimals: number): string {
  const text = decimalText(value, decimals)
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text
}

/** A number with as many decimals as it was typed with, at most six: levels and settings, never estimates. */
export function plainNumber(value: number): string {
  return withOwnMark(keptNumber(value))
}

/** The same with the point, whoever reads it: what is kept as a name, such as a level's. */
export function keptNumber(value: number): string {
  const text = String(Math.round(Math.abs(value) * 1e6) / 1e6)
  return value < 0 && text !== '0' ? `−${text}` : text
}

/** How many decimals a typed number has, at most six. */
export function decimalsOf(value: number): number {
  const text = String(Math.round(Math.abs(value) * 1e6) / 1e6)
  return text.includes('.') ? text.length - text.indexOf('.') - 1 : 0
}

/** A whole number from 0 up with a mark at each thousand: a comma, or the thin blank of ISO 80000 where that marks decimals. */
export function thousandsText(count: number): string {
  const mark = manner().decimal === 'comma' ? '\u202f' : ','
  return String(count).replace(/\B(?=(?:\d{3})+$)/g, mark)
}

/** A probability as it is quoted: three decimals, and "below 0.001" instead of a false exactness. */
export function probabilityText(p: number): string {
  return p < 0.001 ? `below ${decimalText(0.001, 3)}` : decimalText(p, 3)
}

/** The same in a narrow column. */
export function shortProbabilityText(p: number): string {
  return p < 0.001 ? `< ${decimalText(0.001, 3)}` : decimalText(p, 3)
}

/** A number with its unit: % and ° keep a thin distance as the trade writes them; no unit, no blank. */
export function withUnit(text: string, unit: string): string {
  const short = shortUnit(unit)
  return short === '' ? text : `${text} ${short}`
}

/** The unit as it stands after a figure: "% of flour" is written % there, and in full where the axis is named. */
export function shortUnit(unit: string): string {
  const trimmed = unit.trim()
  return trimmed.startsWith('%') ? '%' : trimmed
}
