import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { drawClusters } from '@/core/statistics/resampling/draw-clusters.ts'

/** Resamples are drawn by so many, for progress and stopping. */
export const resamplesInSlice = 1000

/** Draws of so few clusters are kept (some megabytes at most), those of more are drawn anew. */
const mostKept = 100

let last: { key: string; slices: Int32Array[]; draw: () => Int32Array } | null = null

/**
 * The draws of a seed, slice by slice. All responses of a trial draw from its seed, and mostly over as many clusters: what the
 * first has drawn serves the others.
 */
export function drawsOfSeed(seed: number, count: number): (slice: number) => Int32Array {
  const key = `${seed} ${count}`
  const source = last?.key === key ? last : begun(key, seed, count)
  if (count <= mostKept) last = source
  return (slice) => {
    while (source.slices.length <= slice) source.slices.push(source.draw())
    return source.slices[slice] as Int32Array
  }
}

function begun(key: string, seed: number, count: number) {
  const random = xoroshiro128plus(seed | 0)
  return { key, slices: [], draw: () => drawClusters(random, count, resamplesInSlice) }
}
