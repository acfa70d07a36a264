import { decimalText } from './number-text.ts'
import { stepDecimals } from './round-to-step.ts'

/** Decimals that grams are written with: those their scale shows; without a scale one, below 10 g two. */
export function gramsDecimals(grams: number, resolutionGrams: number | null): number {
  if (resolutionGrams !== null) return stepDecimals(resolutionGrams)
  return Math.abs(grams) < 10 ? 2 : 1
}

/** Grams with those decimals. */
export function gramsText(grams: number, resolutionGrams: number | null = null): string {
  return decimalText(grams, gramsDecimals(grams, resolutionGrams))
}
