import { decimalText, signedText } from './number-text.ts'

/** How many decimals a difference or an interval's end is written with: one from one up, more for smaller ones. */
export function differenceDecimals(difference: number): number {
  const size = Math.abs(difference)
  if (size === 0 || size >= 1) return 1
  return Math.min(6, 1 - Math.floor(Math.log10(size)))
}

/** A difference with its sign and two figures at least: "+1.7", "−0.042". */
export function differenceText(difference: number): string {
  return signedText(difference, differenceDecimals(difference))
}

/** An interval: "6.3 to 7.5". The decimals follow its half width. */
export function intervalText(low: number, high: number): string {
  const decimals = differenceDecimals((high - low) / 2)
  return `${decimalText(low, decimals)} to ${decimalText(high, decimals)}`
}
