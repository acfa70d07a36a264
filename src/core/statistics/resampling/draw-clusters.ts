import { uniformInt } from 'pure-rand/distribution/uniformInt'
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'

/** Of more clusters than this, single ones are drawn: a table of their pairs would be large. */
export const mostPaired = 64

/**
 * How many numbers a resample of so many clusters is drawn as (see `drawClusters`).
 *
 * @example drawsIn(1) // 1 (by hand)
 */
export function drawsIn(count: number): number {
  return count > mostPaired ? count : Math.ceil(count / 2)
}

/**
 * Which of `count` clusters each of some resamples holds, drawn with replacement: `drawsIn(count)` numbers for each resample.
 * A number below `count` is one cluster; from there on, count·(1 + first) + second is a pair of clusters, drawn at once, since
 * pairs take half the steps to draw and to sum.
 *
 * @example drawClusters(random, 1, 3) // [0, 0, 0] (one cluster leaves no choice)
 */
export function drawClusters(
  random: RandomGenerator,
  count: number,
  resamples: number,
): Int32Array {
  const inOne = drawsIn(count)
  const pairs = count - inOne
  const drawn = new Int32Array(inOne * resamples)
  for (let at = 0; at < drawn.length; at += 1)
    drawn[at] =
      at % inOne < pairs
        ? uniformInt(random, count, count + count * count - 1)
        : uniformInt(random, 0, count - 1)
  return drawn
}
