import type { ScoreResponse } from '@/core/findings/table/score-table.ts'

/** Most that two means can differ: 1 to 9 leaves 8 points, 1 to 5 leaves 4; a measurement has no such end. */
const widest: Record<ScoreResponse['scale'], number | null> = {
  'nine-point': 8,
  'just-about-right': 4,
  measured: null,
}

/** The most that two means on a scale can differ, in points; null where nothing bounds it or the scale is not known. */
export function widestDifference(scale: ScoreResponse['scale'] | undefined): number | null {
  return scale === undefined ? null : widest[scale]
}

/**
 * An interval of a difference without what the scale rules out: no difference on a nine-point scale is beyond 8 points.
 * Leaving out what cannot be keeps its confidence. `whole` when nothing is left out but that, so that it says nothing.
 */
export function withinScale(
  { low, high }: { low: number; high: number },
  scale: ScoreResponse['scale'] | undefined,
): { low: number; high: number; whole: boolean } {
  const most = widestDifference(scale)
  if (most === null) return { low, high, whole: false }
  const inside = { low: Math.max(low, -most), high: Math.min(high, most) }
  return { ...inside, whole: inside.low === -most && inside.high === most }
}
