import type { LevelId } from '@/core/findings/rungs/rung-shape.ts'
import {
  type ComparedLevels,
  levelDifference,
} from '@/core/statistics/block-model/level-difference.ts'
import { tQuantile } from '@/core/statistics/distributions/students-t.ts'
import type { TooSmall } from './evidence-shape.ts'

/**
 * Too small to matter, by intersection and union: all pairs lie within the margin when each |difference| plus the plain one-sided
 * bound does; apart from that, each level against the usual alone. The second never implies the first.
 * `oneSided` is the error of a bound, 5 % unless one looks early.
 */
export function tooSmall(
  fit: ComparedLevels,
  levelIds: readonly LevelId[],
  margin: number,
  usual: number | null,
  oneSided: number,
): TooSmall {
  const factor = tQuantile(1 - oneSided, fit.df2)
  const within = (a: number, b: number) => {
    const { difference, se } = levelDifference(fit, a, b)
    return Math.abs(difference) + factor * se < margin
  }
  let largest = 0
  let allPairs = true
  for (let a = 0; a < fit.levelCount; a += 1) {
    for (let b = a + 1; b < fit.levelCount; b += 1) {
      largest = Math.max(largest, Math.abs(levelDifference(fit, a, b).difference))
      if (!within(a, b)) allPairs = false
    }
  }
  return {
    margin,
    largest,
    allPairs,
    usual:
      usual === null
        ? null
        : {
            level: levelIds[usual] as LevelId,
            within: levelIds.every((_, level) => level === usual || within(usual, level)),
          },
  }
}
