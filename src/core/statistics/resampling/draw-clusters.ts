import { uniformInt } from 'pure-rand/distribution/uniformInt'
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'

/** Which of `count` clusters each of some resamples holds: `count` numbers from 0 for each, drawn with replacement. */
export function drawClusters(
  random: RandomGenerator,
  count: number,
  resamples: number,
): Int32Array {
  const drawn = new Int32Array(count * resamples)
  for (let at = 0; at < drawn.length; at += 1) drawn[at] = uniformInt(random, 0, count - 1)
  return drawn
}
