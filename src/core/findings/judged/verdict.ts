import type { Verdict } from '@/core/findings/response-findings-shape.ts'
import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'

/** Two levels compared at a rung: mean of b minus mean of a, with simultaneous 95 % limits, 90 % limits and adjusted p. */
export interface Comparison {
  a: number
  b: number
  difference: number
  low: number
  high: number
  low90: number
  high90: number
  p: number
}

/**
 * What a rung may say of the main question, from its simultaneous intervals (against the control where there is one,
 * else all pairs) and the margin M: *matters* when some 95 % interval lies wholly beyond M either way; *differs* when one
 * excludes 0; *too small* when every 90 % interval lies inside M; *leans* when some 80 % interval excludes 0 and
 * the rung stands on enough to lean (`mayLean`); else *not settled*. Without a margin neither *matters* nor *too small*.
 * Told with the pair of the largest difference, the lower level first and the difference the other's mean less its own,
 * also where the control is the higher of the two. An interval excludes 0 at 95 % (80 %) when its p is below 0.05 (0.2).
 */
export function verdictOf(
  comparisons: readonly Comparison[],
  names: readonly LevelName[],
  margin: number | null,
  mayLean: boolean,
): Verdict {
  const [first, ...rest] = comparisons
  if (!first) throw new Error('a verdict needs at least one comparison')
  const largest = rest.reduce(
    (best, next) => (Math.abs(next.difference) > Math.abs(best.difference) ? next : best),
    first,
  )
  const { a, b, difference, low, high } = rising(largest)
  return {
    kind: kindOf(comparisons, margin, mayLean),
    difference,
    low,
    high,
    margin,
    between: [names[a] as LevelName, names[b] as LevelName],
  }
}

function rising(pair: Comparison): Comparison {
  if (pair.a < pair.b) return pair
  const { a, b, difference, low, high } = pair
  return { ...pair, a: b, b: a, difference: -difference, low: -high, high: -low }
}

function kindOf(
  comparisons: readonly Comparison[],
  margin: number | null,
  mayLean: boolean,
): Verdict['kind'] {
  if (margin !== null && comparisons.some(({ low, high }) => low > margin || high < -margin)) {
    return 'matters'
  }
  if (comparisons.some(({ p }) => p < 0.05)) return 'differs'
  if (
    margin !== null &&
    comparisons.every(({ low90, high90 }) => low90 > -margin && high90 < margin)
  ) {
    return 'too-small'
  }
  return mayLean && comparisons.some(({ p }) => p < 0.2) ? 'leans' : 'not-settled'
}
