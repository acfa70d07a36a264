import type { AxisLevel } from './level-axis.ts'

/** How many times longer an axis gets by a number that nobody means, such as 6 on the way from 64 to 65. */
const sudden = 2

/**
 * Whether the same levels, with a number changed, would stand on an axis more than twice as long as before: most often
 * a number of which half is typed. Never so while levels come or go, or from levels that have no length between them.
 */
export function stretchedAxis(before: readonly AxisLevel[], now: readonly AxisLevel[]): boolean {
  const same = before.length === now.length && before.every(({ id }, at) => id === now[at]?.id)
  const length = lengthOf(before)
  return same && length > 0 && lengthOf(now) > sudden * length
}

/** From the least value to the greatest; 0 for options of a choice. */
function lengthOf(levels: readonly AxisLevel[]): number {
  const values = levels.flatMap(({ value }) => value ?? [])
  return values.length > 0 ? Math.max(...values) - Math.min(...values) : 0
}
