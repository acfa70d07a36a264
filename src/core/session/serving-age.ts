import { keptAnswer } from '@/core/record/kept-answer.ts'
import { stampsOf } from './bakes.ts'
import type { Standing } from './effective-events.ts'

/**
 * Minutes from the oven to a moment, such as the start of a ballot: what freshness a mouth met. Null when the piece's
 * bake-out was not logged or lies after that moment.
 */
export function minutesSinceOven(
  effective: readonly Standing[],
  pieceId: string,
  at: number,
): number | null {
  const outAt = bakedOut(effective, effective.length).get(pieceId) ?? null
  return outAt === null || at < outAt ? null : (at - outAt) / 60_000
}

const bakedOut = keptAnswer((effective: readonly Standing[], _length: number) =>
  stampsOf(effective, 'bake-out'),
)
