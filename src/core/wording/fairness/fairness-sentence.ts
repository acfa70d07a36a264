import type { MinutesEnds } from '@/core/dough-temperature/proof-minutes.ts'
import type { FairnessCode } from '@/core/fairness/fairness-data.ts'
import type { ItemOf } from '@/core/fairness/fairness-item.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { massUnit, roundedMass } from '@/core/units/mass-text.ts'
import { decimalText, withUnit } from '@/core/units/number-text.ts'
import { degreesFigure, ownDegreeSign, stepsWithSign } from '@/core/units/temperature-text.ts'
import { minutesText } from '@/core/wording/words/duration-text.ts'

/** Says what one item found and how much, in one or two sentences. */
export type Sentences<Codes extends FairnessCode> = {
  readonly [Code in Codes]: (item: ItemOf<Code>, plan: Plan) => string
}

/** The size of an item with so many decimals; 0 where it only says yes. */
export function sizeText(item: { amount: { value: number } | null }, decimals: number): string {
  return decimalText(item.amount?.value ?? 0, decimals)
}

/** "4.2 to 5.1 %"; one number where both are the same when written. */
export function rangeText(
  { low, high }: { low: number; high: number },
  decimals: number,
  unit: string,
): string {
  const [from, to] = [decimalText(low, decimals), decimalText(high, decimals)]
  return withUnit(from === to ? from : `${from} to ${to}`, unit)
}

/** The same of weights, in the person's unit. */
export function massBetween(ends: { low: number; high: number }, gramDecimals: number): string {
  const [from, to] = [roundedMass(ends.low, gramDecimals), roundedMass(ends.high, gramDecimals)]
  return withUnit(from === to ? from : `${from} to ${to}`, massUnit())
}

/** The same of temperatures. */
export function degreesBetween(ends: { low: number; high: number }, decimals: number): string {
  const [from, to] = [degreesFigure(ends.low, decimals), degreesFigure(ends.high, decimals)]
  return withUnit(from === to ? from : `${from} to ${to}`, ownDegreeSign())
}

/** The size of an item that is a difference of temperatures, in °C as it is found. */
export function stepsApart(item: { amount: { value: number } | null }, decimals: number): string {
  return stepsWithSign(item.amount?.value ?? 0, decimals)
}

/** ", about 9 min of proof (7 to 12)": by the usual gassing rate, and by the slowest and quickest that were seen. */
export function proofText({
  minutes,
  minutesEnds,
}: {
  minutes: number | null
  minutesEnds: MinutesEnds | null
}): string {
  if (minutes === null) return ''
  const about = `, about ${minutesText(minutes, 0)} of proof`
  if (minutesEnds === null) return about
  const { least, most } = minutesEnds
  const [low, high] = [decimalText(least, 0), decimalText(most, 0)]
  return low === high ? about : `${about} (${low} to ${high})`
}
