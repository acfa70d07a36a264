import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Trend } from '@/core/findings/rungs/rung-shape.ts'
import { plainNumber, probabilityText, shortUnit, withUnit } from '@/core/units/number-text.ts'
import type { Naming } from './answer-of-rung.ts'
import { differenceDecimals, differenceText } from './difference-text.ts'
import { reasonText } from './reason-text.ts'

/** Which way: "For each 1 % liking changes by +0.21 (+0.11 to +0.31, p 0.001)." Or why no line is drawn. */
export function trendSentence(trend: Trend | Absent, name: string, { factor }: Naming): string {
  if (!isPresent(trend)) return reasonText(trend)
  const { slope, low, high, p } = trend
  const decimals = Math.max(
    differenceDecimals(slope),
    differenceDecimals(high > low ? (high - low) / 2 : slope),
  )
  const one =
    shortUnit(factor.unitOfMeasure) === ''
      ? `one more of ${factor.name.toLocaleLowerCase('en')}`
      : withUnit(plainNumber(1), factor.unitOfMeasure)
  const lower = name.slice(0, 1).toLocaleLowerCase('en') + name.slice(1)
  return `For each ${one} ${lower} changes by ${differenceText(slope, decimals)} (${differenceText(low, decimals)} to ${differenceText(high, decimals)}, p ${probabilityText(p)}).`
}
