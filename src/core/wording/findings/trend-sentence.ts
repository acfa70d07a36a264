import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Trend } from '@/core/findings/rungs/rung-shape.ts'
import { plainNumber, probabilityText, shortUnit, withUnit } from '@/core/units/number-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import type { Naming } from './answer-of-rung.ts'
import { differenceDecimals, differenceText } from './difference-text.ts'
import { reasonText } from './reason-text.ts'

/** Which way: "For each 1 % liking changes by +0.21 (+0.11 to +0.31, p 0.001)." Or why no line is drawn. */
export function trendSentence(trend: Trend | Absent, name: string, { factor }: Naming): string {
  if (!isPresent(trend)) return reasonText(trend)
  const { slope, low, high, p } = trend
  // The interval says how far the figure carries; a slope near nothing asks for no more of them.
  const decimals = differenceDecimals(high > low ? (high - low) / 2 : slope)
  const one =
    shortUnit(factor.unitOfMeasure) === ''
      ? `one more of ${midSentence(factor.name)}`
      : withUnit(plainNumber(1), factor.unitOfMeasure)
  return `For each ${one} ${midSentence(name)} changes by ${differenceText(slope, decimals)} (${differenceText(low, decimals)} to ${differenceText(high, decimals)}, p ${probabilityText(p)}).`
}
