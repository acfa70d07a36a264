import { deviation, max, mean, median, min } from 'd3-array'
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
 */
export function describe(values: readonly number[], confidence = 0.95): Description {
  const n = values.length
  const centre = mean(values) ?? null
  const sd = deviation(values) ?? null
  const half = sd === null ? null : (tHalfWidth(confidence, n - 1) * sd) / Math.sqrt(n)
  return {
    n,
    mean: centre,
    sd,
    low: centre === null || half === null ? null : centre - half,
    high: centre === null || half === null ? null : centre + half,
    median: median(values) ?? null,
    least: min(values) ?? null,
    most: max(values) ?? null,
  }
}
