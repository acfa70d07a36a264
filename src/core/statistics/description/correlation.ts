import { max, mean } from 'd3-array'
import { type Answer, refuse } from '@/core/statistics/reason.ts'

/**
 * Pearson's correlation of two equally long lists. Refuses `too-few-values` below three pairs and `constant-values` where one
 * list does not vary (to 1e-12 of its size).
 *
 * @example correlation([1, 2, 3], [2, 4, 6]) // {"ok": true, "r": 1} (on one line)
 */
export function correlation(
  x: readonly number[],
  y: readonly number[],
): Answer<{ r: number; n: number }> {
  if (x.length !== y.length) throw new RangeError('a correlation needs lists of one length')
  if (x.length < 3) return refuse('too-few-values')
  const [dx, dy] = [centred(x), centred(y)]
  if (!dx || !dy) return refuse('constant-values')
  const shared = dx.reduce((sum, value, i) => sum + value * (dy[i] as number), 0)
  const r = shared / Math.sqrt(squares(dx) * squares(dy))
  return { ok: true, r: Math.max(-1, Math.min(1, r)), n: x.length }
}

function centred(values: readonly number[]): number[] | undefined {
  const centre = mean(values) ?? 0
  const off = values.map((value) => value - centre)
  const largest = max(values, Math.abs) ?? 0
  return (max(off, Math.abs) ?? 0) <= 1e-12 * largest ? undefined : off
}

function squares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0)
}
