import { isPresent } from '@/core/findings/reason.ts'
import type { Best, FiellerSet } from '@/core/findings/rungs/rung-shape.ts'

/** Where inside the levels the best may still lie: from `from` up, or up to `upTo`; both null where no end is bounded. */
export interface StillInside {
  from: number | null
  upTo: number | null
}

/**
 * What Fieller's 95 % set leaves of the range that was tried when the answer is past an end: a top before that end which
 * the data do not exclude. Null when they do, when nothing past an end is claimed, where a sure bend opens the other way (the
 * best is then at an end), and where a target is met instead. `values` are the levels tried, in the factor's unit.
 */
export function stillInside(
  best: Pick<Best, 'answer' | 'vertex' | 'fieller' | 'crossing'>,
  values: readonly number[],
): StillInside | null {
  const { answer, vertex, fieller, crossing } = best
  if (answer !== 'past-high' && answer !== 'past-low') return null
  if (crossing && isPresent(crossing)) return null
  if (!isPresent(vertex) || !isPresent(fieller)) return null
  const up = answer === 'past-high'
  const set = up ? fieller : mirrored(fieller)
  const [low, high] = up
    ? [Math.min(...values), Math.max(...values)]
    : [-Math.max(...values), -Math.min(...values)]
  // A sure bend whose turn lies at the far end is the worst point, from which it gets better all the way.
  const turn = up ? vertex : -vertex
  if (set.kind === 'interval' && turn < high) return null
  const from = firstInside(set, low, high)
  if (from === null) return null
  const end = from <= low ? null : from
  if (up) return { from: end, upTo: null }
  return { from: null, upTo: end === null ? null : -end }
}

/** The least level from which on the set reaches up to the high end; `low` when it holds the whole range; null when it reaches none of it. */
function firstInside(set: FiellerSet, low: number, high: number): number | null {
  if (set.kind === 'everything') return low
  if (set.kind === 'interval')
    return set.low === null ? low : set.low < high ? Math.max(low, set.low) : null
  if (set.high !== null && set.high < high) return Math.max(low, set.high)
  return set.low !== null && set.low >= high ? low : null
}

function mirrored({ kind, low, high }: FiellerSet): FiellerSet {
  return { kind, low: high === null ? null : -high, high: low === null ? null : -low }
}
