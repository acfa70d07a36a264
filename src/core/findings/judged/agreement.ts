import { deviation } from 'd3-array'
import { type Absent, absent } from '@/core/findings/reason.ts'
import type { Agreement } from '@/core/findings/response-findings-shape.ts'
import type { Cells } from '@/core/findings/rungs/cells.ts'
import { parted } from '@/core/findings/rungs/parted.ts'
import type { LevelId } from '@/core/findings/rungs/rung-shape.ts'
import type { TasterMeans } from '@/core/findings/rungs/taster-means.ts'
import { correlation } from '@/core/statistics/description/correlation.ts'
import type { Better } from '@/core/trial/response.ts'

/**
 * Does each taster agree with the rest? Pearson correlation of a taster's level means with the mean of the others' (over
 * the levels both have, three at least), the level they like best (none when two stand equal to 10 decimals), and the
 * standard deviation (n - 1) of their scores, which shows how much of the scale they use.
 */
export function agreementOf(
  cells: Cells,
  means: TasterMeans,
  levelIds: readonly LevelId[],
  better: Better,
): Agreement[] {
  const scoresBy = parted(cells.y, cells.taster, cells.tasters.length)
  const totals = levelIds.map((_, level) => totalOf(means, level))
  return cells.tasters.map((taster, at) => ({
    taster,
    correlation: correlationWithRest(means[at] as (number | null)[], totals),
    best: bestLevel(means[at] as (number | null)[], levelIds, better),
    sd: deviation(scoresBy[at] as Float64Array) ?? absent('too-few-values'),
  }))
}

type Total = { sum: number; count: number }

function totalOf(means: TasterMeans, level: number): Total {
  const known = means.flatMap((row) => row[level] ?? [])
  return { sum: known.reduce((sum, value) => sum + value, 0), count: known.length }
}

/** The mean of the others is what all gave less the taster's own, so that many tasters cost no more than their number. */
function correlationWithRest(
  own: readonly (number | null)[],
  totals: readonly Total[],
): number | Absent {
  const pairs = own.flatMap((mean, level) => {
    const { sum, count } = totals[level] as Total
    return mean === null || count < 2 ? [] : [[mean, (sum - mean) / (count - 1)] as const]
  })
  const found = correlation(
    pairs.map(([mean]) => mean),
    pairs.map(([, rest]) => rest),
  )
  return found.ok ? found.r : absent(found.reason)
}

function bestLevel(
  means: readonly (number | null)[],
  levelIds: readonly LevelId[],
  better: Better,
): LevelId | Absent {
  const good = means.map((mean) => (mean === null ? null : goodness(mean, better)))
  const top = good.reduce<number | null>(
    (best, value) => (value !== null && (best === null || value > best) ? value : best),
    null,
  )
  if (top === null) return absent('no-scores')
  const first = good.flatMap((value, level) =>
    value !== null && top - value < 5e-11 ? [levelIds[level] as LevelId] : [],
  )
  return first.length === 1 ? (first[0] as LevelId) : absent('tied')
}

/** How good an answer is, so that more is better: turned round where lower is better, the nearness to a target, else itself. */
export function goodness(value: number, better: Better): number {
  switch (better.is) {
    case 'lower':
      return -value
    case 'target':
      return -Math.abs(value - better.at)
    default:
      return value
  }
}
