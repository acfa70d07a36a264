import { decimalText, signedText } from '@/core/units/number-text.ts'

/** How many decimals a difference or an interval's end is written with: one from one up, more for smaller ones. */
export function differenceDecimals(difference: number): number {
  const size = Math.abs(difference)
  if (size < 5e-7 || size >= 1) return 1
  return Math.min(6, 1 - Math.floor(Math.log10(size)))
}

/** A difference with its sign and two figures at least: "+1.7", "−0.042". */
export function differenceText(
  difference: number,
  decimals: number = differenceDecimals(difference),
): string {
  return signedText(difference, decimals)
}

/** An interval: "6.3 to 7.5". The decimals follow its half width. */
export function intervalText(
  low: number,
  high: number,
  decimals: number = differenceDecimals((high - low) / 2),
): string {
  return `${decimalText(low, decimals)} to ${decimalText(high, decimals)}`
}

/** Decimals that a whole table of differences is written with, so that its figures stand under one another. */
export function tableDecimals(rows: readonly { low: number; high: number }[]): number {
  const widths = rows.map(({ low, high }) => (high - low) / 2).filter((width) => width > 0)
  return widths.length === 0 ? 1 : differenceDecimals(Math.min(...widths) / 4)
}
