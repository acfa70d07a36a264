import { isPresent } from '@/core/findings/reason.ts'
import type { Best } from '@/core/findings/rungs/rung-shape.ts'

/** The best value of the factor with what bounds it; an end that is null is open. */
export interface BestSpan {
  value: number
  low: number | null
  high: number | null
}

/**
 * The best as one interval on the axis: the top of the curve inside the range, or the single place where a target is
 * met. Null where the data give no single interval: then nothing is drawn, and the words say why.
 */
export function bestSpan(best: Best): BestSpan | null {
  const { answer, vertex, fieller, crossing } = best
  if (crossing !== undefined) {
    if (!isPresent(crossing)) return null
    const [value, second] = crossing.at
    const [stretch, other] = crossing.stretches
    if (value === undefined || second !== undefined || !stretch || other) return null
    return { value, ...stretch }
  }
  if (answer !== 'inside' || !isPresent(vertex) || !isPresent(fieller)) return null
  if (fieller.kind !== 'interval') return null
  return { value: vertex, low: fieller.low, high: fieller.high }
}
