import { plainMass, signedMass } from '@/core/units/mass-text.ts'
import { decimalsOf } from '@/core/units/number-text.ts'

/** A reading that stands, in grams; one that is off by more than a tenth says how far, since it may be a slip of the finger. */
export function loggedText(grams: number, plannedGrams: number): string {
  const off = grams - plannedGrams
  const shown = plainMass(grams)
  return Math.abs(off) > plannedGrams / 10
    ? `${shown} (${signedMass(off, Math.max(decimalsOf(grams), decimalsOf(plannedGrams)))})`
    : `✓ ${shown}`
}
