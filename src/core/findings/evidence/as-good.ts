import { controlLoadings } from '@/core/statistics/block-model/against-control.ts'
import {
  type ComparedLevels,
  levelDifference,
} from '@/core/statistics/block-model/level-difference.ts'
import {
  evenLoadings,
  oneSidedDunnettQuantile,
} from '@/core/statistics/distributions/one-sided-dunnett.ts'
import { tQuantile } from '@/core/statistics/distributions/students-t.ts'

/** One level against the best of the others: its mean less theirs (below 0 is worse), the lower limit, and whether it lies above −margin. */
export interface AsGoodLevel {
  short: number
  low: number
  passes: boolean
}

/**
 * As good as the best, within the margin: every level against the best of the others. A level named before the mix needs the
 * plain one-sided bound, and only it is judged. Else stepping down: levels in the order of their distance above −margin, the r-th of t
 * against d of min(t − 1, t − r + 1) comparisons (one-sided Dunnett), until the first that fails. With unequal errors: no
 * stepping, min over j of (mean_i − mean_j − d_j·se_ij), d_j with the comparator j as control (d_i would let 6 in 100 through).
 * `sign` is −1 where lower is better, `oneSided` the error of a bound. Worked out by simulation and quadrature for this project, checked against R.
 */
export function asGood(
  fit: ComparedLevels,
  sign: 1 | -1,
  margin: number,
  named: number | null,
  oneSided: number,
): AsGoodLevel[] {
  const levels = Array.from({ length: fit.levelCount }, (_, level) => level)
  const short = (i: number, j: number) => sign * levelDifference(fit, j, i).difference
  const others = (i: number) => levels.filter((j) => j !== i)
  const below = levels.map((i) => Math.min(...others(i).map((j) => short(i, j))))
  const bounded = (i: number, factor: (j: number) => number) =>
    Math.min(...others(i).map((j) => short(i, j) - factor(j) * levelDifference(fit, j, i).se))
  if (named !== null) {
    const t = tQuantile(1 - oneSided, fit.df2)
    return levels.map((i) => {
      const low = bounded(i, () => t)
      return { short: below[i] as number, low, passes: i === named && low > -margin }
    })
  }
  if (!equalErrors(fit)) {
    const factors = levels.map((j) =>
      oneSidedDunnettQuantile(oneSided, controlLoadings(fit, j).loadings, fit.df2),
    )
    return levels.map((i) => {
      const low = bounded(i, (j) => factors[j] as number)
      return { short: below[i] as number, low, passes: low > -margin }
    })
  }
  return steppedDown(fit, below, margin, oneSided)
}

function steppedDown(
  fit: ComparedLevels,
  below: readonly number[],
  margin: number,
  oneSided: number,
): AsGoodLevel[] {
  const { se } = levelDifference(fit, 0, 1)
  const t = fit.levelCount
  const order = below.map((_, at) => at).toSorted((a, b) => (below[b] ?? 0) - (below[a] ?? 0))
  const found: AsGoodLevel[] = []
  let failed = false
  for (const [rank, level] of order.entries()) {
    const comparisons = Math.min(t - 1, t - rank)
    const factor = oneSidedDunnettQuantile(oneSided, evenLoadings(comparisons), fit.df2)
    const short = below[level] as number
    const low = short - factor * se
    if (!(low > -margin)) failed = true
    found[level] = { short, low, passes: !failed }
  }
  return found
}

/** True when every difference of two levels has the same standard error, to rounding. */
export function equalErrors(fit: ComparedLevels): boolean {
  const first = levelDifference(fit, 0, 1).unscaledVariance
  for (let a = 0; a < fit.levelCount; a += 1)
    for (let b = a + 1; b < fit.levelCount; b += 1)
      if (Math.abs(levelDifference(fit, a, b).unscaledVariance / first - 1) > 1e-9) return false
  return true
}
