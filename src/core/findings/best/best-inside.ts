import { isPresent } from '@/core/findings/reason.ts'
import type { Best } from '@/core/findings/rungs/rung-shape.ts'
import { stillInside } from './still-inside.ts'

/**
 * Whether an expected best inside the range was borne out: *held* when it lies inside and its 95 % set keeps within the
 * levels tried, *not held* when that set leaves nothing inside, else *not settled*. `values` are the levels tried, in the
 * factor's unit. With a target, the stretches at which it may be met stand for the set.
 */
export function bestInsideHolds(
  best: Best,
  values: readonly number[],
): 'held' | 'not-held' | 'not-settled' {
  const { answer, fieller, crossing } = best
  if (answer === 'flat') return 'not-settled'
  const low = Math.min(...values)
  const high = Math.max(...values)
  const met = crossing && isPresent(crossing) ? crossing.stretches : null
  if (answer === 'inside') {
    const sets = met ?? (isPresent(fieller) ? [fieller] : [])
    return sets.every((set) => (set.low ?? -Infinity) >= low && (set.high ?? Infinity) <= high)
      ? 'held'
      : 'not-settled'
  }
  const open =
    met?.some((set) => (set.low ?? -Infinity) < high && (set.high ?? Infinity) > low) ??
    stillInside(best, values) !== null
  return open ? 'not-settled' : 'not-held'
}
