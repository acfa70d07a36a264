import {
  type ComparedLevels,
  levelDifference,
} from '@/core/statistics/block-model/level-difference.ts'
import { tQuantile } from '@/core/statistics/distributions/students-t.ts'

/** Levels, by their number, that may be the best, and the stretch they stand for. */
export interface BestPlace {
  candidates: number[]
  low: number
  high: number
  openLow: boolean
  openHigh: boolean
}

/**
 * Where the best lies, whatever the shape between the levels as long as it has one hump: candidates are the levels that no
 * other beats by more than the plain one-sided bound; the interval runs from the first to the last of them, each end widened by half the
 * neighbouring gap and cut to the levels tried. An end among the candidates may hide a best past it. `inside`: both ends are shown
 * to be no best, so that they are none of the candidates. `sign` is −1 where lower is better. Worked out by simulation and
 * quadrature for this project, checked against R.
 */
export function bestPlace(
  fit: ComparedLevels,
  values: readonly number[],
  sign: 1 | -1,
  oneSided: number,
  inside: boolean,
): BestPlace {
  const last = values.length - 1
  const factor = tQuantile(1 - oneSided, fit.df2)
  const all = values.map((_, level) => level)
  const candidates = all.filter((i) => {
    if (inside && (i === 0 || i === last)) return false
    return all.every((j) => {
      if (i === j) return true
      const { difference, se } = levelDifference(fit, i, j)
      return sign * difference <= factor * se
    })
  })
  const [first, final] = [candidates[0] as number, candidates.at(-1) as number]
  const middle = (a: number, b: number) => ((values[a] as number) + (values[b] as number)) / 2
  return {
    candidates,
    low: first === 0 ? (values[0] as number) : middle(first - 1, first),
    high: final === last ? (values[last] as number) : middle(final, final + 1),
    openLow: first === 0,
    openHigh: final === last,
  }
}
