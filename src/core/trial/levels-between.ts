import { toFixedDecimals } from '@/core/units/fixed.ts'
import { stepDecimals } from '@/core/units/round-to-step.ts'

export type LevelsBetween =
  | { ok: true; values: number[] }
  | { ok: false; reason: 'not-a-number' | 'too-few' | 'too-many' | 'same-ends' }

/** More lines than this no pair of hands works in a day, and no serving order is balanced for. */
export const mostLevels = 12

/**
 * Evenly spaced levels from the first to the last, both included, as numbers a person would write: two more decimals than
 * the ends have at the most (66 to 82 in five is 66, 70, 74, 78, 82; 1 to 2 in four is 1, 1.33, 1.67, 2).
 */
export function levelsBetween(first: number, last: number, count: number): LevelsBetween {
  if (![first, last, count].every(Number.isFinite)) return { ok: false, reason: 'not-a-number' }
  if (!Number.isInteger(count) || count < 2) return { ok: false, reason: 'too-few' }
  if (count > mostLevels) return { ok: false, reason: 'too-many' }
  if (first === last) return { ok: false, reason: 'same-ends' }
  const decimals = Math.max(decimalsOf(first), decimalsOf(last)) + 2
  const values = Array.from({ length: count }, (_, index) => {
    const exact = first + ((last - first) * index) / (count - 1)
    return Number(toFixedDecimals(Number(exact.toPrecision(14)), decimals))
  })
  return { ok: true, values }
}

function decimalsOf(value: number): number {
  return value === 0 ? 0 : Math.min(8, stepDecimals(Math.abs(value)))
}
