import { freeAxis, type ValueAxis } from './value-axis.ts'

/** A difference of two levels with its simultaneous interval. */
export interface PairInput {
  a: string
  b: string
  /** The two levels by id, where a picture may light them. */
  levelIds?: readonly [string, string]
  difference: number
  low: number
  high: number
}

export interface PairRow extends PairInput {
  /** Beyond the margin: matters; zero left out: differs; else the interval holds zero. */
  shows: 'matters' | 'differs' | 'open'
}

export interface PairPicture {
  axis: ValueAxis
  rows: PairRow[]
  margin: number | null
}

/**
 * Differences as a picture of intervals against the margin: one row a pair, the largest difference last, on one axis
 * that holds zero and the margin. Pairs keep their direction: difference = b − a.
 */
export function pairPicture(pairs: readonly PairInput[], margin: number | null): PairPicture {
  const rows = pairs
    .map((pair) => ({
      ...pair,
      shows: shown(pair, margin ?? Number.POSITIVE_INFINITY),
    }))
    .toSorted((one, other) => Math.abs(one.difference) - Math.abs(other.difference))
  const ends = rows.flatMap(({ low, high }) => [low, high])
  const around = margin === null ? [0] : [-margin, 0, margin]
  return { axis: freeAxis([...ends, ...around], 4), rows, margin }
}

function shown({ low, high }: PairInput, margin: number): PairRow['shows'] {
  if (low > margin || high < -margin) return 'matters'
  return low > 0 || high < 0 ? 'differs' : 'open'
}
