import {
  degreeSign,
  shownDegrees,
  shownSteps,
  type TemperatureUnit,
} from '@/app/kit/field/temperature-words.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { massRange, massUnit, plainMass, scaleStepText } from '@/core/units/mass-text.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { mixingWayTexts } from '@/core/wording/weighing/mixing-way-text.ts'

/** A piece of a sentence: words, or a value that can be pressed. */
export type SentencePart = string | { value: string }

/** What an entry of the kitchen says after its name, as one sentence without its stop, temperatures in the person's unit. */
export function thingSentence(thing: KitchenThing, unit: TemperatureUnit): SentencePart[] {
  const sign = degreeSign(unit)
  const degrees = (celsius: number) => plainNumber(shownDegrees(celsius, unit))
  switch (thing.kind) {
    case 'scale':
      return [
        ...[' shows ', { value: scaleStepText(thing.resolutionGrams) }],
        ...[', up to ', { value: grams(thing.capacityGrams) }],
        ...(thing.errorGrams === undefined
          ? []
          : [', right to ', { value: `±${plainMass(thing.errorGrams)}` }]),
        ...(thing.errorPercent === undefined
          ? []
          : [', ', { value: `±${plainNumber(thing.errorPercent)} % of the weight` }]),
      ]
    case 'thermometer':
      return [
        ' is right to ',
        { value: `±${plainNumber(shownSteps(thing.spreadCelsius, unit))} ${sign}` },
      ]
    case 'tap': {
      const { coldestCelsius, warmestCelsius } = thing
      const range = `${degrees(coldestCelsius)} to ${degrees(warmestCelsius)} ${sign}`
      return [' gives ', { value: range }]
    }
    case 'fridge':
      return [
        ...[' holds ', { value: `${degrees(thing.celsius)} ${sign}` }],
        ...(thing.places === undefined ? [] : [', ', { value: `${thing.places} tubs` }]),
        ...(thing.freezerCelsius === undefined
          ? []
          : [', its freezer ', { value: `${degrees(thing.freezerCelsius)} ${sign}` }]),
      ]
    case 'oven':
      return [
        ' holds ',
        { value: thing.places === 1 ? 'one piece at once' : `${thing.places} pieces at once` },
        ...(thing.maxCelsius === undefined
          ? []
          : [', up to ', { value: `${degrees(thing.maxCelsius)} ${sign}` }]),
      ]
    case 'mixer':
      return [
        ...[
          ' takes ',
          { value: massRange(thing.leastDoughGrams, thing.mostDoughGrams) },
          ' of dough',
        ],
        ...(thing.way === undefined ? [] : [', ', { value: mixingWayTexts[thing.way] }]),
        ...(thing.workKilojoulesPerKilogram === undefined
          ? []
          : [', work ', { value: `${plainNumber(thing.workKilojoulesPerKilogram)} kJ per kg` }]),
        ...(thing.bowlGrams === undefined ? [] : [', bowl of ', { value: grams(thing.bowlGrams) }]),
      ]
    case 'flour': {
      const said = [
        thing.proteinPercent === undefined
          ? []
          : [`${plainNumber(thing.proteinPercent)} % protein`],
        thing.moisturePercent === undefined
          ? []
          : [`${plainNumber(thing.moisturePercent)} % moisture`],
        thing.lot ? [thing.lot] : [],
      ].flat()
      if (said.length === 0) return [', ', { value: 'nothing else said' }]
      return said.flatMap((value): SentencePart[] => [', ', { value }])
    }
    case 'taster':
      return []
  }
}

/** Grams as a scale's maker says them: whole kilograms, and half ones, as such. */
function grams(count: number): string {
  return massUnit() === 'g' && count >= 1000 && count % 500 === 0
    ? `${plainNumber(count / 1000)} kg`
    : plainMass(count)
}
