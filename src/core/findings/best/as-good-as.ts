import { leastThatWouldDo } from '@/core/findings/judged/least-that-would-do.ts'
import { type Absent, absent } from '@/core/findings/reason.ts'
import type { Equivalence } from '@/core/findings/response-findings-shape.ts'
import type { FittedRung } from '@/core/findings/rungs/rung-of.ts'
import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'
import { levelDifference } from '@/core/statistics/block-model/level-difference.ts'
import { tQuantile } from '@/core/statistics/distributions/students-t.ts'
import type { Better } from '@/core/trial/response.ts'

/** What a rung stands on, for saying how much more of it would do. */
export interface RungSize {
  of: 'tasters' | 'sessions' | 'flights'
  count: number
}

/**
 * As good as the best liked? One-sided non-inferiority of every other level: difference = mean - best mean (turned so
 * that below 0 is worse), its lower limit the plain one-sided 95 % t; it passes when that limit lies above -margin.
 *
 * Of levels equal to 10 decimals the lowest is the best liked.
 *
 * Refuses `no-margin`, `no-direction` (only responses that are better higher or lower can be as good), and
 * `margin-too-fine` when every one-sided half-width reaches the margin, so that nothing could pass: then with the number
 * of tasters (pieces rung), sessions or flights that would bring it below.
 */
export function asGoodAs(
  fitted: FittedRung,
  better: Better,
  margin: number | null,
  size: RungSize,
): Equivalence[] | Absent {
  if (margin === null) return absent('no-margin')
  if (better.is !== 'higher' && better.is !== 'lower') return absent('no-direction')
  const sign = better.is === 'lower' ? -1 : 1
  const { fit, present, rung } = fitted
  const good = rung.means.map(({ estimate }) => sign * estimate)
  const top = Math.max(...good)
  const best = good.findIndex((value) => top - value < 5e-11)
  const factor = tQuantile(0.95, fit.df2)
  const compared = present.levels.flatMap(({ name }, at) => {
    if (at === best) return []
    const { difference, se } = levelDifference(fit, best, at)
    const low = sign * difference - factor * se
    const against = present.levels[best]?.name as LevelName
    const entry = {
      level: name,
      against,
      difference: sign * difference,
      low,
      passes: low > -margin,
    }
    return [{ entry, se }]
  })
  const finest = Math.min(...compared.map(({ se }) => se))
  if (factor * finest >= margin) {
    const enough = leastThatWouldDo(finest, margin, size.count, fit.df1)
    return { reason: 'margin-too-fine', ...(enough === null ? {} : { [size.of]: enough }) }
  }
  return compared.map(({ entry }) => entry)
}
