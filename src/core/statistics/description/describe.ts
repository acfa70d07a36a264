import { deviation, mean, quantileSorted } from 'd3-array'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'

/** What some values look like; the spread and the limits are null where there are fewer than two values. */
export type Description = {
  n: number
  mean: number | null
  sd: number | null
  low: number | null
  high: number | null
  median: number | null
  least: number | null
  most: number | null
}

/**
 * Number, mean, standard deviation (n − 1), plain t interval of the mean, median (quantile type 7), least and most.
 * Says nothing about what would happen again: that is for the models with their blocks.
 *
 * @example describe([2, 4, 6]) // {"n": 3, "mean": 4, "sd": 2, "median": 4} (by hand)
 */
export function describe(values: ArrayLike<number>, confidence = 0.95): Description {
  const sorted = Float64Array.from(values).sort()
  const n = sorted.length
  const centre = mean(sorted) ?? null
  const sd = deviation(sorted) ?? null
  const half = sd === null ? null : (tHalfWidth(confidence, n - 1) * sd) / Math.sqrt(n)
  return {
    n,
    mean: centre,
    sd,
    low: centre === null || half === null ? null : centre - half,
    high: centre === null || half === null ? null : centre + half,
    median: quantileOfSorted(sorted, 0.5) ?? null,
    least: sorted[0] ?? null,
    most: sorted.at(-1) ?? null,
  }
}

/** The value that a share of sorted numbers lies below (quantile type 7); undefined when there are none. */
export function quantileOfSorted(sorted: Float64Array, share: number): number | undefined {
  // The library reads anything with a length and places; its types know of arrays alone.
  return quantileSorted(sorted as ArrayLike<number> as number[], share)
}
