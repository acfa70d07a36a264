import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { Best } from '@/core/findings/rungs/rung-shape.ts'

/** The best value of the factor with what bounds it; an end that is null is open. */
export interface BestSpan {
  value: number
  low: number | null
  high: number | null
}

/**
 * The best as one interval on the axis, as far as the conclusion claims one: the stretch of a best in between with the curve's
 * top, where the hump may be even; or the single place where a target is met. Null else: then nothing is drawn, and the words say why.
 */
export function bestSpan(
  { shown, place, better }: Pick<Conclusion, 'shown' | 'place' | 'better'>,
  best: Best | null,
): BestSpan | null {
  if (better === 'target') {
    const crossing = best?.crossing
    if (shown.length === 0 || !crossing || !isPresent(crossing)) return null
    const [value, second] = crossing.at
    const [stretch, other] = crossing.stretches
    if (value === undefined || second !== undefined || !stretch || other) return null
    return { value, ...stretch }
  }
  if (!isPresent(place) || place.even === null) return null
  return { value: place.even.at, low: place.low, high: place.high }
}
