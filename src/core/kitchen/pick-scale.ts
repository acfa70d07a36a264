import type { Scale } from './kitchen-record.ts'

export type PickedScale =
  | { ok: true; scale: Scale }
  | { ok: false; reason: 'no-scale' | 'over-capacity' }

/**
 * The scale for a weight: the finest that can hold it, the one with more room where two are equally fine. The tub's own
 * mass is not counted against the capacity. Refuses when there is no scale, or none that holds so much.
 */
export function pickScale(grams: number, scales: readonly Scale[]): PickedScale {
  if (scales.length === 0) return { ok: false, reason: 'no-scale' }
  let best: Scale | null = null
  for (const scale of scales)
    if (grams <= scale.capacityGrams && (best === null || isFiner(scale, best))) best = scale
  return best ? { ok: true, scale: best } : { ok: false, reason: 'over-capacity' }
}

function isFiner(one: Scale, other: Scale): boolean {
  if (one.resolutionGrams !== other.resolutionGrams)
    return one.resolutionGrams < other.resolutionGrams
  return one.capacityGrams > other.capacityGrams
}
