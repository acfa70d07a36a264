import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Bootstrap } from '@/core/findings/response-findings-shape.ts'
import type { LevelName } from '@/core/findings/table/score-table.ts'
import { thousandsText, withUnit } from '@/core/units/number-text.ts'
import { placeText } from '@/core/wording/words/level-text.ts'
import { reasonText } from './reason-text.ts'

/** Where the curve's top falls as tasters or sessions are drawn again, in one sentence that does not call it an interval of the best, with the seed that repeats it. */
export function bootstrapSentence(
  drawn: Bootstrap | Absent,
  levels: readonly LevelName[],
  unit: string,
): string {
  if (!isPresent(drawn)) return reasonText(drawn)
  const between = `${placeText(drawn.low, levels)} and ${withUnit(placeText(drawn.high, levels), unit)}`
  return `With the ${drawn.over} drawn again ${thousandsText(drawn.resamples)} times, the curve’s top falls between ${between} in 95 of 100 draws (seed ${drawn.seed}): that is where such ${drawn.over === 'tasters' ? 'panels’' : 'sessions’'} bests fall, not how surely the best is known.`
}
