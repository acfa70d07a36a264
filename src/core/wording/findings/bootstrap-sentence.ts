import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Bootstrap } from '@/core/findings/response-findings-shape.ts'
import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'
import { thousandsText, withUnit } from '@/core/units/number-text.ts'
import { placeText } from '@/core/wording/words/level-text.ts'
import { reasonText } from './reason-text.ts'

/** The best by drawing the tasters or sessions again, in one sentence with the seed that repeats it. */
export function bootstrapSentence(
  drawn: Bootstrap | Absent,
  levels: readonly LevelName[],
  unit: string,
): string {
  if (!isPresent(drawn)) return reasonText(drawn)
  const between = `${placeText(drawn.low, levels)} and ${withUnit(placeText(drawn.high, levels), unit)}`
  return `With the ${drawn.over} drawn again ${thousandsText(drawn.resamples)} times, the best lies between ${between} in 95 of 100 draws (seed ${drawn.seed}).`
}
