import {
  degreeSign,
  degreesText,
  stepsText,
  type TemperatureUnit,
} from '@/app/kit/temperature-words.ts'
import type {
  BatchWater,
  WaterPlan,
  WaterPlanTrouble,
} from '@/core/dough-temperature/water-plan.ts'
import { decimalText } from '@/core/wording/number-text.ts'

/** Why there is no water temperature to show, with the mend. */
export function whyNoWater(reason: WaterPlanTrouble['reason']): string {
  if (reason === 'no-temperatures')
    return 'Fill in Temperatures, and the water of each batch stands here.'
  return reason === 'no-batch'
    ? 'The water of each batch stands here as soon as there is a batch.'
    : 'No water goes in at the mix, so its temperature cannot set the dough’s.'
}

/** What one water for all would do to the doughs, in degrees and minutes, and whether that is worth minding. */
export function spreadWords(
  { spreadCelsius, spreadMinutes }: WaterPlan,
  matched: boolean,
  unit: TemperatureUnit,
): string {
  const minutes =
    spreadMinutes === null ? '' : `, about ${decimalText(spreadMinutes, 0)} min of proof`
  const spread = `${stepsText(spreadCelsius, unit, 1)} ${degreeSign(unit)} apart${minutes}`
  if (matched)
    return spreadCelsius < 0.05
      ? 'One water for all would do as well here.'
      : `With one water for all, the doughs would leave the mixer ${spread}.`
  return spreadCelsius < 0.05
    ? 'All doughs leave the mixer equally warm.'
    : `With this one water, the doughs leave the mixer ${spread}.`
}

/** Water that is colder or hotter than the yeast or the tap allows, each once with the batches it concerns. */
export function waterWarnings({ batches }: WaterPlan, unit: TemperatureUnit): string[] {
  const warnings = batches.flatMap((batch) =>
    warningsOf(batch, unit).map((text) => `${text}${forBatch(batch)}`),
  )
  return [...new Set(warnings)]
}

function forBatch({ label }: BatchWater): string {
  return label === '' ? '.' : ` (${label}).`
}

function warningsOf(batch: BatchWater, unit: TemperatureUnit): string[] {
  const { pastLimitsCelsius, limits, hotterThanTapCelsius, ice } = batch
  const found: string[] = []
  const sign = degreeSign(unit)
  if (pastLimitsCelsius > 0)
    found.push(
      `Hotter than the ${degreesText(limits.mostCelsius, unit, 0)} ${sign} this yeast bears well`,
    )
  if (pastLimitsCelsius < 0)
    found.push(
      `Colder than the ${degreesText(limits.leastCelsius, unit, 0)} ${sign} this yeast bears well`,
    )
  if (hotterThanTapCelsius !== null && hotterThanTapCelsius > 0)
    found.push(
      `Heat the water: ${stepsText(hotterThanTapCelsius, unit, 1)} ${sign} hotter than the tap`,
    )
  if (ice && !ice.ok && ice.reason === 'more-than-all')
    found.push('Even ice alone would not cool this dough enough; cool the flour')
  return found
}
