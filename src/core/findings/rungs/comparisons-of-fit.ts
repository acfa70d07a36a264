import {
  againstControl,
  type AgainstControl as ControlComparison,
} from '@/core/statistics/block-model/against-control.ts'
import { allPairs, type PairOfLevels } from '@/core/statistics/block-model/all-pairs.ts'
import type { LevelFit } from '@/core/statistics/block-model/level-fit.ts'

/** All comparisons of one fit: pairs by Tukey and Kramer, and with a control Dunnett's. */
export interface FitComparisons {
  pairs: PairOfLevels[]
  control: ControlComparison[] | null
}

/** Compares the levels of a fit at 95 %; `pairVariances` widen or narrow each pair's own error where the means come from unlike patterns. */
export function comparisonsOfFit(
  fit: LevelFit,
  control: number | null,
  pairVariances: readonly (readonly number[])[] | null,
): FitComparisons {
  return {
    pairs: allPairs(fit, 0.95, pairVariances),
    control: control === null ? null : againstControl(fit, control),
  }
}
