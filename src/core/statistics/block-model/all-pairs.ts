import {
  studentizedRangeUpper,
  studentizedRangeUpperQuantile,
} from '@/core/statistics/distributions/studentized-range.ts'
import { type ComparedLevels, levelDifference } from './level-difference.ts'

export type PairOfLevels = {
  a: number
  b: number
  difference: number
  se: number
  low: number
  high: number
  p: number
}

/**
 * Every pair of levels, a before b, difference = mean(b) − mean(a), by Tukey–Kramer: p and simultaneous limits from the
 * studentized range at √2·|difference|/se for all levels of the fit (Kramer 1956, Biometrics 12:307; from memory). Where the means
 * themselves come from unlike patterns, `pairVariances` gives each pair's variance over the average pair's.
 *
 * @example allPairs(fit) // [{"difference": 2}, {"difference": 4}, {"difference": 2}] (the worked table, by hand)
 */
export function allPairs(
  fit: ComparedLevels,
  confidence = 0.95,
  pairVariances: readonly (readonly number[])[] | null = null,
): PairOfLevels[] {
  const { levelCount, df2 } = fit
  const factor = studentizedRangeUpperQuantile(1 - confidence, levelCount, df2) / Math.SQRT2
  const pairs: PairOfLevels[] = []
  for (let a = 0; a < levelCount; a += 1) {
    for (let b = a + 1; b < levelCount; b += 1) {
      const { difference, se: plain } = levelDifference(fit, a, b)
      const se = pairVariances ? plain * Math.sqrt(pairVariances[a]?.[b] as number) : plain
      const q = (Math.SQRT2 * Math.abs(difference)) / se
      pairs.push({
        a,
        b,
        difference,
        se,
        low: difference - factor * se,
        high: difference + factor * se,
        p: studentizedRangeUpper(q, levelCount, df2),
      })
    }
  }
  return pairs
}
