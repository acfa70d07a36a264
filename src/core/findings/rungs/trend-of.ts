import { type Absent, absent } from '@/core/findings/reason.ts'
import type { LevelsPresent } from '@/core/findings/table/levels-present.ts'
import type { Cells } from '@/core/statistics/block-model/cells.ts'
import { fitPolynomial } from '@/core/statistics/curve/polynomial-fit.ts'
import { slopeOf } from '@/core/statistics/curve/slope.ts'
import type { Trend } from './rung-shape.ts'

/** Which way: the slope of y ~ block + L for one unit of the factor, plain t interval and two-sided p. */
export function trendOf(cells: Cells, present: LevelsPresent): Trend | Absent {
  const line = fitPolynomial(cells, levelValues(present), 1)
  if (!line.ok) return absent(line.reason)
  const { slope, se, low, high, p } = slopeOf(line)
  return { slope, se, low, high, p }
}

/** L of each level present. Throws for a choice: its levels have no number. */
export function levelValues({ levels }: LevelsPresent): number[] {
  return levels.map(({ value, label }) => {
    if (value === null) throw new Error(`level ${label} has no value`)
    return value
  })
}
