import { isPresent } from '@/core/findings/reason.ts'
import type { Best } from '@/core/findings/rungs/rung-shape.ts'

/** The place the best is narrowed around: the curve's top where it lies inside the range. */
export function bestPlace(best: Best): number | null {
  return best.answer === 'inside' && isPresent(best.vertex) ? best.vertex : null
}
