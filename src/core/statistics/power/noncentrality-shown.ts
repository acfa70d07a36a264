import { findRoot } from '@/core/statistics/roots/find-root.ts'
import { powerBeyond } from './test-power.ts'

const known = new Map<string, number>()

/**
 * The true difference, in standard errors, that |t| beyond a critical value finds with power 0.8; kept once worked out.
 *
 * @example noncentralityShown(1.95996, 100000) // 2.80 (1.960 + 0.842 of the normal)
 */
export function noncentralityShown(critical: number, df: number, power = 0.8): number {
  const key = `${critical} ${df} ${power}`
  const before = known.get(key)
  if (before !== undefined) return before
  const missing = (size: number) => powerBeyond(critical, df, size) - power
  let high = critical + 3
  while (missing(high) < 0) high *= 1.5
  const found = findRoot(missing, 0, high, 1e-10)
  if (known.size > 2000) known.clear()
  known.set(key, found)
  return found
}
