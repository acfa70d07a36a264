import { bendWeights } from '@/core/statistics/block-model/level-contrast.ts'
import { averageOverScale } from '@/core/statistics/distributions/chi-mixture.ts'
import { normalDensity, normalLower } from '@/core/statistics/distributions/normal.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'

/** Evenly spaced levels with a parabola's top in their middle, `height` above both ends; `meanSd` is of one level's mean, `df` of its estimated error. */
export interface InsideDesign {
  levels: number
  meanSd: number
  df: number
  height: number
  alpha: number
}

/** Simpson's rule takes an even number. */
const slices = 40
const reach = 8.5

/**
 * Chance that a best in between is shown: the bend against `alpha`, two-sided, and the inner levels together above each end, each one-sided at
 * `alpha`. Given the estimated error, three normal sums decide: the bend, the inner levels less the ends, and last less first, which
 * with even spacing depends on neither; integrated by Simpson's rule over the second, the first by its conditional normal. Needs three
 * levels. Worked out for this project and checked against its own simulation.
 *
 * @example chanceInside({ levels: 3, meanSd: 0.01, df: 20, height: 1, alpha: 0.05 }) // 1.000 (a top of a hundred standard deviations)
 */
export function chanceInside({ levels, meanSd, df, height, alpha }: InsideDesign): number {
  if (levels < 3 || df < 1) return 0
  const values = Array.from({ length: levels }, (_, at) => (2 * at) / (levels - 1) - 1)
  const effects = values.map((value) => (height * (1 - value * value)) / meanSd)
  const weights = bendWeights(values)
  const length = Math.sqrt(weights.reduce((sum, weight) => sum + weight * weight, 0))
  const bend = weights.map((weight) => -weight / length)
  const inner = values.map((_, at) => (at === 0 || at === levels - 1 ? -1 : 2 / (levels - 2)))
  const innerSd = Math.sqrt(2 + 4 / (levels - 2))
  const sum = (of: readonly number[], over: readonly number[]) =>
    of.reduce((total, one, at) => total + one * (over[at] as number), 0)
  const [ofBend, ofInner] = [sum(bend, effects), sum(inner, effects)]
  const shared = sum(bend, inner) / innerSd
  const left = Math.sqrt(Math.max(0, 1 - shared * shared))
  // With three levels the bend is nothing else than the inner level less the ends.
  const same = left < 1e-6
  const bendNeeds = tHalfWidth(1 - alpha, df)
  const eachNeeds = tHalfWidth(1 - 2 * alpha, df) * Math.sqrt(1 + 1 / (levels - 2))
  return averageOverScale(df, (u) => {
    const byBend = same ? (bendNeeds * u - ofBend) * innerSd + ofInner : Number.NEGATIVE_INFINITY
    const low = Math.max(2 * eachNeeds * u, byBend, ofInner - reach * innerSd)
    const step = (ofInner + reach * innerSd - low) / slices
    if (!(step > 0)) return 0
    let total = 0
    for (let at = 0; at <= slices; at += 1) {
      const innerLess = low + at * step
      const z = (innerLess - ofInner) / innerSd
      const room = (innerLess - 2 * eachNeeds * u) / Math.SQRT2
      const ends = 1 - 2 * normalLower(-room)
      const bends = same ? 1 : normalLower((ofBend + shared * z - bendNeeds * u) / left)
      const weight = at === 0 || at === slices ? 1 : at % 2 === 1 ? 4 : 2
      total += weight * normalDensity(z) * ends * bends
    }
    return (total * step) / (3 * innerSd)
  })
}
