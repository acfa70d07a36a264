import { averageOverScale } from './chi-mixture.ts'
import { normalLower } from './normal.ts'
import type { Tails } from './tails.ts'

/**
 * Both tails of the noncentral t: a normal with mean `noncentrality` over an independent estimated standard deviation.
 * P(T ≤ t) is the average of Φ(t·s − noncentrality) over s = √(χ²/df), the definition itself
 * (Johnson, Kotz & Balakrishnan 1995, vol. 2, chapter 31; from memory), computed by `averageOverScale`. All terms are positive.
 */
export function noncentralTTails(t: number, df: number, noncentrality: number): Tails {
  const far = (t * t) / 2
  const sharp = noncentrality * noncentrality
  const lower = averageOverScale(
    df,
    (s) => normalLower(t * s - noncentrality),
    t < 0 ? far : 0,
    sharp,
  )
  const upper = averageOverScale(
    df,
    (s) => normalLower(noncentrality - t * s),
    t > 0 ? far : 0,
    sharp,
  )
  return lower < upper ? { lower, upper: 1 - lower } : { lower: 1 - upper, upper }
}
