import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Best, Crossing, Curve, Trend } from '@/core/findings/rungs/rung-shape.ts'
import type { Better } from '@/core/trial/response.ts'

export interface AnswerInput {
  curve: Curve
  trend: Trend | Absent
  values: readonly number[]
  better: Better
  crossing?: Crossing | Absent | undefined
}

/**
 * What may be claimed of the best. When the bend shows at 5 % (Fieller's set is an interval): a top inside the levels is
 * *inside*, outside them *past* that end; a bottom inside is *least inside*, outside it the best lies past the other end. When
 * only the slope shows at 5 %, past the end it rises to. When neither shows, *flat*; likewise where neither more nor less counts as better, since no best may be claimed there. Lower is better: turned round. With a target:
 * *inside* when it is met between the lowest and highest level, else past the end that comes nearer to it.
 */
export function bestAnswer(input: AnswerInput): Best['answer'] {
  const { curve, trend, values, better, crossing } = input
  if (better.is === 'neither') return 'flat'
  const low = Math.min(...values)
  const high = Math.max(...values)
  const bends = isPresent(curve.fieller) && curve.fieller.kind === 'interval'
  const slopes = isPresent(trend) && trend.p < 0.05
  if (!bends && !slopes) return 'flat'
  if (crossing && isPresent(crossing)) return metAnswer(crossing, curve, trend, low, high)
  const sign = better.is === 'lower' ? -1 : 1
  if (bends && isPresent(curve.vertex)) {
    const inside = curve.vertex >= low && curve.vertex <= high
    const top = sign * curve.quadratic < 0
    if (inside) return top ? 'inside' : 'least-inside'
    return curve.vertex > high === top ? 'past-high' : 'past-low'
  }
  return isPresent(trend) && sign * trend.slope > 0 ? 'past-high' : 'past-low'
}

function metAnswer(
  crossing: Crossing,
  curve: Curve,
  trend: Trend | Absent,
  low: number,
  high: number,
): Best['answer'] {
  const { at } = crossing
  if (at.some((level) => level >= low && level <= high)) return 'inside'
  const [nearest] = at.toSorted((a, b) => away(a, low, high) - away(b, low, high))
  if (nearest !== undefined) return nearest > high ? 'past-high' : 'past-low'
  const middle = (low + high) / 2
  if (crossing.of === 'curve' && isPresent(curve.vertex)) {
    if (curve.vertex >= low && curve.vertex <= high) return 'inside'
    return curve.vertex > middle ? 'past-high' : 'past-low'
  }
  return isPresent(trend) && trend.slope > 0 ? 'past-high' : 'past-low'
}

function away(level: number, low: number, high: number): number {
  return Math.max(low - level, level - high)
}
