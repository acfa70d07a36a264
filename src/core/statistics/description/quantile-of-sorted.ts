import { quantileSorted } from 'd3-array'

/** The value that a share of sorted numbers lies below (quantile type 7); undefined when there are none. */
export function quantileOfSorted(sorted: Float64Array, share: number): number | undefined {
  // The library reads anything with a length and places; its types know of arrays alone.
  return quantileSorted(sorted as ArrayLike<number> as number[], share)
}
