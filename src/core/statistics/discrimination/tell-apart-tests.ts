import { normalDensity, normalLower } from '@/core/statistics/distributions/normal.ts'
import { findRoot } from '@/core/statistics/roots/find-root.ts'

/** Three samples, which one is odd; two and a reference, which one is it; two, which has more of something. */
export type TellApartTest = 'triangle' | 'duo-trio' | 'paired-comparison'

const guessing = { triangle: 1 / 3, 'duo-trio': 1 / 2, 'paired-comparison': 1 / 2 }
/** Nodes and weights on (0, ∞) for what falls off there, by the double exponential rule z = exp(u − e^{−u}). */
const nodes = Array.from({ length: 96 }, (_, i) => {
  const u = -3.7 + i / 15
  const z = Math.exp(u - Math.exp(-u))
  return { z, weight: (z * (1 + Math.exp(-u)) * normalDensity(z)) / 15 }
})

/** Chance of the right answer by guessing. */
export function guessChance(test: TellApartTest): number {
  return guessing[test]
}

/**
 * Chance of a right answer when two samples lie d′ standard deviations apart for the taster (Thurstone's model; Ennis 1993,
 * J Sens Stud 8:353; from memory). Paired: Φ(d/√2). Duo-trio: 1 − Φ(d/√2) − Φ(d/√6) + 2Φ(d/√2)Φ(d/√6).
 * Triangle: 2∫₀^∞ [Φ(−z√3 + d√⅔) + Φ(−z√3 − d√⅔)]φ(z)dz, by the double exponential rule
 * (Takahasi & Mori 1974, Publ RIMS 9:721; from memory).
 */
export function chanceCorrect(test: TellApartTest, dPrime: number): number {
  if (test === 'triangle') return triangleChance(dPrime)
  const a = normalLower(dPrime / Math.SQRT2)
  if (test === 'paired-comparison') return a
  const b = normalLower(dPrime / Math.sqrt(6))
  return 1 - a - b + 2 * a * b
}

/** The d′ that gives a chance of right answers: 0 at or below guessing, Infinity at 1. */
export function dPrimeOf(test: TellApartTest, chance: number): number {
  if (chance <= guessChance(test)) return 0
  if (chance >= 1) return Infinity
  return findRoot((d) => chanceCorrect(test, d) - chance, 0, 60)
}

function triangleChance(dPrime: number): number {
  const root = Math.sqrt(3)
  const shift = dPrime * Math.sqrt(2 / 3)
  return nodes.reduce((sum, { z, weight }) => {
    const value = normalLower(shift - z * root) + normalLower(-shift - z * root)
    return sum + 2 * weight * value
  }, 0)
}
