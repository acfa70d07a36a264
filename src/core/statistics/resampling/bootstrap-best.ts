import { quantileOfSorted } from '@/core/statistics/description/describe.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import type { CurveClusters } from './clusters.ts'
import { drawsIn, mostPaired } from './draw-clusters.ts'

/** A bootstrap under way: the turning points found so far. Hand it to `takeResamples` until enough are drawn. */
export type BootstrapOfBest = {
  clusters: CurveClusters
  /** The five sums of whatever is drawn at once, a cluster or a pair, at five times its number. */
  sumsDrawn: Float64Array
  /** Room for as many turning points as there will be resamples; the first `turned` are found. */
  vertices: Float64Array
  turned: number
  drawn: number
  tops: number
}

export type BootstrapLimits = {
  low: number
  high: number
  median: number
  resamples: number
  shareWithTop: number
  shareWithoutCurve: number
}

/**
 * A bootstrap of where the curve turns with room for so many resamples, nothing drawn yet.
 *
 * @example startBootstrap(clusters, 5) // {"drawn": 0, "turned": 0} (nothing drawn yet)
 */
export function startBootstrap(clusters: CurveClusters, resamples: number): BootstrapOfBest {
  return {
    clusters,
    sumsDrawn: withPairs(clusters),
    vertices: new Float64Array(resamples),
    turned: 0,
    drawn: 0,
    tops: 0,
  }
}

/** The sums of each cluster and, numbered as `drawClusters` does, of each pair. */
function withPairs({ count, sums }: CurveClusters): Float64Array {
  if (count > mostPaired) return sums
  const all = new Float64Array(5 * count * (1 + count))
  all.set(sums)
  for (let first = 0; first < count; first += 1)
    for (let second = 0; second < count; second += 1)
      for (let j = 0; j < 5; j += 1)
        all[5 * (count * (1 + first) + second) + j] =
          (sums[5 * first + j] as number) + (sums[5 * second + j] as number)
  return all
}

/**
 * Takes in some more resamples (see `drawClusters`): of each the curve is refitted from the summed products of the drawn
 * clusters (a system of two unknowns), and where it turns is noted. Changes the bootstrap in place, so that a long run can be
 * cut into slices for progress and stopping; the answer is the same however it is cut.
 * A resample whose curvature is numerically zero has no turning point and is counted as such. Throws past the room given.
 *
 * @example [startBootstrap(clusters, 2)].map((begun) => (takeResamples(begun, Int32Array.of(3, 3)), begun.drawn)) // [2] (two resamples of one pair each)
 */
export function takeResamples(bootstrap: BootstrapOfBest, drawn: Int32Array): void {
  const { count, centre, scale } = bootstrap.clusters
  const { sumsDrawn } = bootstrap
  const inOne = drawsIn(count)
  const resamples = drawn.length / inOne
  const room = bootstrap.vertices.length - bootstrap.drawn
  if (resamples > room)
    throw new RangeError(`there is room for ${room} more resamples, not ${resamples}`)
  for (let from = 0; from < drawn.length; from += inOne) {
    let xx = 0
    let xs = 0
    let ss = 0
    let xy = 0
    let sy = 0
    for (let draw = from; draw < from + inOne; draw += 1) {
      const at = 5 * (drawn[draw] as number)
      xx += sumsDrawn[at] as number
      xs += sumsDrawn[at + 1] as number
      ss += sumsDrawn[at + 2] as number
      xy += sumsDrawn[at + 3] as number
      sy += sumsDrawn[at + 4] as number
    }
    const determinant = xx * ss - xs * xs
    const b = xy * ss - sy * xs
    const c = sy * xx - xy * xs
    const curved =
      determinant > 1e-12 * xx * ss && Math.abs(c) > 1e-12 * (Math.abs(b) + Math.abs(sy * xx))
    if (!curved) continue
    bootstrap.vertices[bootstrap.turned] = centre - (scale * b) / (2 * c)
    bootstrap.turned += 1
    if (c < 0) bootstrap.tops += 1
  }
  bootstrap.drawn += resamples
}

/**
 * Percentile limits (quantile type 7) of where the curve turns over all resamples that have a turning point, with the share
 * of resamples in which it is a top and the share without any. Turning points that are no tops count too: they lie far out and
 * widen the limits, as they should where the data leave the curvature open.
 *
 * Refuses `no-resample-had-a-best` when none turned.
 *
 * @example bootstrapLimits(bootstrap) // {"ok": true, "median": 1.0714, "shareWithTop": 1} (both sessions drawn: the worked hump itself)
 */
export function bootstrapLimits(
  bootstrap: BootstrapOfBest,
  confidence = 0.95,
): Answer<BootstrapLimits> {
  const { vertices, turned, drawn, tops } = bootstrap
  const sorted = vertices.slice(0, turned).sort()
  const at = (share: number) => quantileOfSorted(sorted, share)
  const [low, middle, high] = [at((1 - confidence) / 2), at(0.5), at((1 + confidence) / 2)]
  if (low === undefined || middle === undefined || high === undefined) {
    return refuse('no-resample-had-a-best')
  }
  return {
    ok: true,
    low,
    high,
    median: middle,
    resamples: drawn,
    shareWithTop: tops / drawn,
    shareWithoutCurve: (drawn - turned) / drawn,
  }
}
