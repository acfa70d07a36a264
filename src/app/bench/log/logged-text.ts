import { decimalsOf, plainNumber, signedText } from '@/core/units/number-text.ts'

/** A reading that stands, in grams; one that is off by more than a tenth says how far, since it may be a slip of the finger. */
export function loggedText(grams: number, plannedGrams: number): string {
  const off = grams - plannedGrams
  const shown = `${plainNumber(grams)} g`
  return Math.abs(off) > plannedGrams / 10
    ? `${shown} (${signedText(off, Math.max(decimalsOf(grams), decimalsOf(plannedGrams)))})`
    : `✓ ${shown}`
}
