import { chanceWith } from '@/core/design/as-good-chance.ts'
import { expectedError } from '@/core/design/expected-error.ts'
import { levelVariances, type MadeAndTasted } from '@/core/design/level-variances.ts'
import { lineWeights } from '@/core/statistics/block-model/level-contrast.ts'
import { tHalfWidth } from '@/core/statistics/distributions/students-t.ts'
import { chanceInside } from '@/core/statistics/power/chance-inside.ts'
import { powerBeyond } from '@/core/statistics/power/test-power.ts'
import { tukeyPower } from '@/core/statistics/power/would-show.ts'
import type { HopedToShow } from './hoped-to-show.ts'

export interface DesignToShow extends MadeAndTasted {
  levels: number
}

/**
 * Chance, 0 to 1, that what is hoped for is shown of the factor by the rules of evidence where it is true, levels evenly spaced: a
 * parabola's top in the middle, `size` above both ends, shown to be inside; a rise of `size` from first to last, shown as a line (two levels: as a
 * pair); all levels alike, one named first shown to be as good within `size`; two options `size` apart among others midway, shown by Tukey.
 * 0 with one session, which shows nothing of the factor.
 */
export function chanceToShow(design: DesignToShow, hoped: HopedToShow, size: number): number {
  const { levels, sessions } = design
  const df = (levels - 1) * (sessions - 1)
  if (levels < 2 || sessions < 2) return 0
  const variance = levelVariances(design).theFactor
  switch (hoped) {
    case 'best-inside':
      return chanceInside({
        ...{ levels, df, meanSd: Math.sqrt(variance) },
        ...{ height: size, alpha: expectedError },
      })
    case 'rise': {
      const values = Array.from({ length: levels }, (_, at) => at / (levels - 1))
      const squares = lineWeights(values).reduce((sum, weight) => sum + weight * weight, 0)
      const error = levels === 2 ? 0.05 : expectedError
      return powerBeyond(tHalfWidth(1 - error, df), df, size / Math.sqrt(variance * squares))
    }
    case 'as-good':
      return chanceWith(
        { levels, unitVariance: variance * sessions, margin: size, named: true },
        sessions,
      )
    case 'pair':
      return tukeyPower(size, variance, levels, df)
  }
}
