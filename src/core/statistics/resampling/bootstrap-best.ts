import { quantileOfSorted } from '@/core/statistics/description/quantile-of-sorted.ts'
import { type Answer, refuse } from '@/core/statistics/reason.ts'
import type { CurveClusters } from './clusters.ts'

/** A bootstrap under way: the turning points found so far. Hand it to `takeResamples` until enough are drawn. */
export type BootstrapOfBest = {
  clusters: CurveClusters
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

/** A bootstrap of where the curve turns with room for so many resamples, nothing drawn yet. */
export function startBootstrap(clusters: CurveClusters, resamples: number): BootstrapOfBest {
  return { clusters, vertices: new Float64Array(resamples), turned: 0, drawn: 0, tops: 0 }
}

/**
 * Takes in some more resamples (see `drawClusters`): of each the curve is refitted from the summed products of the drawn
 * clusters (a system of two unknowns), and where it turns is noted. Changes the bootstrap in place, so that a long run can be
 * cut into slices for progress and stopping; the answer is the same however it is cut.
 * A resample whose curvature is numerically zero has no turning point and is counted as such. Throws past the room given.
 */
export function takeResamples(bootstrap: BootstrapOfBest, drawn: Int32Array): void {
  const { count, sums, centre, scale } = bootstrap.clusters
  const resamples = drawn.length / count
  const room = bootstrap.vertices.length - bootstrap.drawn
  if (resamples > room)
    throw new RangeError(`there is room for ${room} more resamples, not ${resamples}`)
  for (let from = 0; from < drawn.length; from += count) {
    let xx = 0
    let xs = 0
    let ss = 0
    let xy = 0
    let sy = 0
    for (let draw = from; draw < from + count; draw += 1) {
      const at = 5 * (drawn[draw] as number)
      xx += sums[at] as number
      xs += sums[at + 1] as number
      ss += sums[at + 2] as number
      xy += sums[at + 3] as number
      sy += sums[at + 4] as number
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
