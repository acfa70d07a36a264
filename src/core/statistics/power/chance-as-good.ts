import { averageOverScale } from '@/core/statistics/distributions/chi-mixture.ts'
import { normalDensity, normalLower } from '@/core/statistics/distributions/normal.ts'
import {
  evenLoadings,
  oneSidedDunnettQuantile,
} from '@/core/statistics/distributions/one-sided-dunnett.ts'
import { tQuantile } from '@/core/statistics/distributions/students-t.ts'

/** A planned comparison with the best: `meanSd` is of one level's mean, `df` of its estimated error. */
export interface AsGoodDesign {
  levels: number
  meanSd: number
  df: number
  margin: number
  /** The level was named before the mix: it needs the plain bound only. */
  named: boolean
  /** How many levels are truly equal and best; the others count as far below. All of them unless said. */
  equal?: number
  /** Error of the one-sided bound; 0.05 unless one looks early. */
  error?: number
}

/** The normal density on a grid: a trapezoid of a quarter over ± 7 is exact to more digits than a double has to lose. */
const step = 0.25
const reach = 7
const grid = Array.from({ length: 2 * (reach / step) + 1 }, (_, at) => {
  const z = at * step - reach
  return { z, weight: step * normalDensity(z) }
})

/**
 * Chance that a level that is truly as good as the best is shown to be so within the margin: E_u∫φ(z)Φ(z + M/s − c√2·u)^(k−1)dz
 * with u = √(χ²_df/df), s the sd of a level's mean, c the one-sided 5 % t for a level named before the mix, else Dunnett's
 * one-sided factor of levels − 1 comparisons; k levels equal. For levels not named it is a lower bound (stepping down finds up to 6 of 100 more).
 * Worked out by simulation and quadrature for this project, checked against R.
 *
 * @example chanceAsGood({ levels: 3, meanSd: 0.1, df: 20, margin: 10, named: true }) // 1.000 (a margin of a hundred standard deviations)
 */
export function chanceAsGood(design: AsGoodDesign): number {
  const { levels, meanSd, df, margin, named, error = 0.05 } = design
  const others = (design.equal ?? levels) - 1
  const factor = named
    ? tQuantile(1 - error, df)
    : oneSidedDunnettQuantile(error, evenLoadings(levels - 1), df)
  return averageOverScale(df, (u) => {
    const shift = margin / meanSd - factor * Math.SQRT2 * u
    let sum = 0
    for (const { z, weight } of grid) sum += weight * normalLower(z + shift) ** others
    return sum
  })
}
