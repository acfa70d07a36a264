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
  const [scale] = scales
    .filter(({ capacityGrams }) => grams <= capacityGrams)
    .toSorted((a, b) => a.resolutionGrams - b.resolutionGrams || b.capacityGrams - a.capacityGrams)
  return scale ? { ok: true, scale } : { ok: false, reason: 'over-capacity' }
}
