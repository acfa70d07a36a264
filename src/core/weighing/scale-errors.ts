import type { Scale } from '@/core/kitchen/kitchen-record.ts'
import { fixedErrorGrams, gainError } from '@/core/kitchen/reading-uncertainty.ts'
import type { SharedError } from './achieved-level.ts'
import type { WeighLine } from './batch-weights.ts'
import { goesFor } from './weigh.ts'

/**
 * What the scales' own errors do to a level, the same for every batch. An error in proportion moves all that one scale weighed
 * together, so that flour and water on one scale keep their ratio; a fixed error falls on each weight by itself, once for each
 * go, since a scale is off differently at different loads.
 */
export function scaleErrorsOf(
  lines: readonly Pick<WeighLine, 'share' | 'grams' | 'targetGrams' | 'scaleId'>[],
  scales: readonly Scale[],
): SharedError[] {
  return scales.flatMap((scale) => {
    const [fixed, gain] = [fixedErrorGrams(scale), gainError(scale)]
    if (fixed === 0 && gain === 0) return []
    const errors: SharedError[] = []
    let [above, below] = [0, 0]
    for (const { share, grams, targetGrams, scaleId } of lines) {
      if (!share || scaleId !== scale.id || grams === 0) continue
      above += share.above * grams
      below += share.below * grams
      const goes = goesFor(targetGrams, scale.capacityGrams)
      if (fixed > 0) errors.push({ ...share, uncertainty: fixed * goes })
    }
    return gain > 0 ? [...errors, { above, below, uncertainty: gain }] : errors
  })
}
