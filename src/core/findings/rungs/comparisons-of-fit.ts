import type { Comparison } from '@/core/findings/judged/verdict.ts'
import {
  againstControl,
  type AgainstControl as ControlComparison,
} from '@/core/statistics/block-model/against-control.ts'
import { allPairs, type PairOfLevels } from '@/core/statistics/block-model/all-pairs.ts'
import type { LevelFit } from '@/core/statistics/block-model/level-fit.ts'

/** All comparisons of one fit: pairs by Tukey-Kramer, and with a control Dunnett's; `decisive` are those a verdict uses. */
export interface FitComparisons {
  pairs: PairOfLevels[]
  control: ControlComparison[] | null
  decisive: Comparison[]
}

/** Compares the levels of a fit at 95 % and, for what is too small to matter, at 90 %. */
export function comparisonsOfFit(fit: LevelFit, control: number | null): FitComparisons {
  const pairs = allPairs(fit)
  if (control === null) {
    const at90 = allPairs(fit, 0.9)
    const decisive = pairs.map((pair, at) => ({ ...pair, ...limits90(at90[at]) }))
    return { pairs, control: null, decisive }
  }
  const compared = againstControl(fit, control)
  const at90 = againstControl(fit, control, 0.9)
  const decisive = compared.map(({ level, difference, low, high, p }, at) => ({
    ...{ a: control, b: level, difference, low, high, p },
    ...limits90(at90[at]),
  }))
  return { pairs, control: compared, decisive }
}

function limits90(at90: { low: number; high: number } | undefined) {
  if (!at90) throw new Error('both confidences compare the same levels')
  return { low90: at90.low, high90: at90.high }
}
