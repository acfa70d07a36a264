import type { MinutesEnds } from '@/core/dough-temperature/proof-minutes.ts'
import type { UnwateredDoughs } from '@/core/dough-temperature/unwatered-doughs.ts'
import {
  type BatchWater,
  coldestWaterCelsius,
  type WaterPlan,
  type WaterPlanTrouble,
} from '@/core/dough-temperature/water-plan.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { massText } from '@/core/units/mass-text.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { degreesFigure, ownDegreeSign, stepsFigure } from '@/core/units/temperature-text.ts'
import { minutesText } from '@/core/wording/words/duration-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'

/** How temperatures are written for the person: the unit's sign, a temperature, and a difference of two, both from °C. */
export interface DegreeWords {
  sign: string
  degrees: (celsius: number, decimals: number) => string
  steps: (celsius: number, decimals: number) => string
}

/** In the manner of now. */
export function ownDegreeWords(): DegreeWords {
  return { sign: ownDegreeSign(), degrees: degreesFigure, steps: stepsFigure }
}

/** Why there is no water temperature to show, with the mend. */
export function whyNoWater(reason: Exclude<WaterPlanTrouble['reason'], 'no-water-at-mix'>): string {
  if (reason === 'no-temperatures')
    return 'Fill in Temperatures, and the water of each batch stands here.'
  return 'The water of each batch stands here as soon as there is a batch.'
}

/** Why water cannot match the doughs, how far apart they come out all the same, and what would bring them together. */
export function unwateredWords(
  { doughs, spreadCelsius, spreadMinutes, spreadMinutesEnds }: UnwateredDoughs,
  { sign, steps }: DegreeWords,
): string {
  const none = doughs.every(({ waterCelsius }) => waterCelsius === null)
  const why = none
    ? 'No water goes in at the mix, so its temperature cannot set the dough’s'
    : 'Some doughs take no water at the mix, so its temperature cannot set theirs'
  if (spreadCelsius < 0.05) return `${why}. The doughs leave the mixer equally warm.`
  return `${why}. The doughs leave the mixer ${steps(spreadCelsius, 1)} ${sign} apart${proofMinutesText(spreadMinutes, spreadMinutesEnds)}. Milk and other cold things that have stood until they are as warm as the room bring them closer.`
}

/** The minutes of proof, with their range where a whole minute shows one: yeasts gas at different rates. */
function proofMinutesText(minutes: number | null, ends: MinutesEnds | null): string {
  if (minutes === null) return ''
  const [least, most] = ends ? [decimalText(ends.least, 0), decimalText(ends.most, 0)] : ['', '']
  const range = least === most ? '' : ` (${least} to ${most})`
  return `, about ${minutesText(minutes, 0)} of proof${range}`
}

type Thermometer = Extract<KitchenThing, { kind: 'thermometer' }>

/**
 * What one water for all would do to the doughs, in degrees and minutes, and whether that is worth minding: a difference
 * within a thermometer's spread, either way, is one that it cannot tell.
 */
export function spreadWords(
  { spreadCelsius, spreadMinutes, spreadMinutesEnds }: WaterPlan,
  matched: boolean,
  { sign, steps }: DegreeWords,
  thermometer: Thermometer | null = null,
): string {
  const minutes = proofMinutesText(spreadMinutes, spreadMinutesEnds)
  const untold =
    thermometer && spreadCelsius < thermometer.spreadCelsius
      ? `; ${thermometer.name}, good to ±${steps(thermometer.spreadCelsius, 1)} ${sign}, cannot tell that`
      : ''
  const spread = `${steps(spreadCelsius, 1)} ${sign} apart${minutes}${untold}`
  if (matched)
    return spreadCelsius < 0.05
      ? 'One water for all would do as well here.'
      : `With one water for all, the doughs would leave the mixer ${spread}.`
  return spreadCelsius < 0.05
    ? 'All doughs leave the mixer equally warm.'
    : `With this one water, the doughs leave the mixer ${spread}.`
}

/** Water that is colder or hotter than the yeast or the tap allows, or than water can be, each once with the batches it concerns. */
export function waterWarnings(
  { batches, wantedDoughCelsius }: WaterPlan,
  words: DegreeWords,
): string[] {
  const warnings = batches.flatMap((batch) =>
    (batch.waterCelsius < coldestWaterCelsius
      ? [frozenText(batch, wantedDoughCelsius, words)]
      : warningsOf(batch, words)
    ).map((text) => `${text}${forBatch(batch)}`),
  )
  return [...new Set(warnings)]
}

function forBatch({ label }: BatchWater): string {
  return label === '' ? '.' : ` (${label}).`
}

/** That no water is cold enough, and what ice would do. */
function frozenText({ ice }: BatchWater, wanted: number, { sign, degrees }: DegreeWords): string {
  const why = `Water is never colder than ${degrees(coldestWaterCelsius, 0)} ${sign}, so water alone cannot bring this dough to ${degrees(wanted, 1)} ${sign}`
  if (ice === null)
    return `${why}. Ice would; add your tap under Kitchen, and how much it takes stands here`
  if (ice.ok)
    return `${why}: ${massText(ice.grams, 0)} of ice in place of as much water, the rest as cold as the tap gives it, would`
  return `${why}. ${ice.reason === 'more-than-all' ? evenIce : noIce(sign, degrees)}`
}

const evenIce = 'Even ice alone would not cool this dough enough; cool the flour'
const noIce = (sign: string, degrees: DegreeWords['degrees']) =>
  `Ice would, but the freezer of your kitchen is above ${degrees(0, 0)} ${sign} and makes none`

function warningsOf(batch: BatchWater, { sign, degrees, steps }: DegreeWords): string[] {
  const { pastLimitsCelsius, limits, hotterThanTapCelsius, ice } = batch
  const found: string[] = []
  if (pastLimitsCelsius > 0)
    found.push(
      `Hotter than the ${degrees(limits.mostCelsius, 0)} ${sign} this yeast bears well${warmedText(batch, { sign, degrees, steps })}`,
    )
  if (pastLimitsCelsius < 0)
    found.push(`Colder than the ${degrees(limits.leastCelsius, 0)} ${sign} this yeast bears well`)
  if (hotterThanTapCelsius !== null && hotterThanTapCelsius > 0)
    found.push(`Heat the water: ${steps(hotterThanTapCelsius, 1)} ${sign} hotter than the tap`)
  if (ice && !ice.ok && ice.reason === 'more-than-all') found.push(evenIce)
  if (ice && !ice.ok && ice.reason === 'freezer-not-freezing')
    found.push(`Colder than the tap gives it. ${noIce(sign, degrees)}`)
  return found
}

/** What spares the yeast hot water: cold ingredients that stood in the room first. */
function warmedText({ warmed }: BatchWater, { sign, degrees }: DegreeWords): string {
  if (!warmed) return ''
  return `. Let ${listText(warmed.names)} stand until as warm as the room: then ${degrees(warmed.waterCelsius, 1)} ${sign} would do`
}

/**
 * How far the doughs may come out from what is wanted, and what brings it down; and that an autolyse was reckoned with.
 */
export function warmthWords(
  { giveOrTakeCelsius, firstWetting, batches }: WaterPlan,
  { sign, steps }: DegreeWords,
): string {
  const learned = batches.every(({ work }) => work.from === 'learned')
  const read = learned
    ? ''
    : ` Read the first dough and log it: the next ones are then good to ± ${steps(1, 0)} ${sign}.`
  const rested =
    firstWetting === 'autolyse'
      ? ' The water goes in at the autolyse, which drifts towards the room on its way: reckoned with, for a covered bowl.'
      : ''
  return `Expect the doughs within ± ${steps(giveOrTakeCelsius, 0)} ${sign}.${read}${rested}`
}
