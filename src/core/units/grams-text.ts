import { decimalText } from './number-text.ts'
import { stepDecimals } from './round-to-step.ts'

/** Grams with the decimals that their scale shows; without a scale a tenth, below 10 g a hundredth. */
export function gramsText(grams: number, resolutionGrams: number | null = null): string {
  const unscaled = Math.abs(grams) < 10 ? 2 : 1
  return decimalText(grams, resolutionGrams === null ? unscaled : stepDecimals(resolutionGrams))
}
