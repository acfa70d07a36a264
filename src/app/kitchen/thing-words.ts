import {
  degreeSign,
  shownDegrees,
  shownSteps,
  type TemperatureUnit,
} from '@/app/kit/field/temperature-words.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { massRange, plainMass, scaleStepText } from '@/core/units/mass-text.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { mixingWayTexts } from '@/core/wording/weighing/mixing-way-text.ts'

/** An entry in the list: what it is called, and its figures in one line, temperatures in the person's unit. */
export function thingWords(
  thing: KitchenThing,
  unit: TemperatureUnit = 'celsius',
): { title: string; facts: string } {
  const sign = degreeSign(unit)
  const degrees = (celsius: number) => plainNumber(shownDegrees(celsius, unit))
  const facts = (parts: (string | false | undefined)[]) => parts.filter(Boolean).join(', ')
  switch (thing.kind) {
    case 'scale':
      return {
        title: thing.name,
        facts: facts([
          `steps of ${scaleStepText(thing.resolutionGrams)}`,
          `up to ${plainMass(thing.capacityGrams)}`,
          thing.errorGrams !== undefined && `good to ±${plainMass(thing.errorGrams)}`,
          thing.errorPercent !== undefined && `±${plainNumber(thing.errorPercent)} % of the weight`,
        ]),
      }
    case 'taster':
      return {
        title: thing.initials || 'erased taster',
        facts: thing.erasedAt ? 'scores kept without a name' : '',
      }
    case 'thermometer':
      return {
        title: thing.name,
        facts: `good to ±${plainNumber(shownSteps(thing.spreadCelsius, unit))} ${sign}`,
      }
    case 'oven':
      return {
        title: thing.name,
        facts: facts([
          thing.places === 1 ? 'one piece at once' : `${thing.places} pieces at once`,
          thing.maxCelsius !== undefined && `up to ${degrees(thing.maxCelsius)} ${sign}`,
        ]),
      }
    case 'mixer':
      return {
        title: thing.name,
        facts: facts([
          `${massRange(thing.leastDoughGrams, thing.mostDoughGrams)} of dough`,
          thing.way !== undefined && mixingWayTexts[thing.way],
          thing.workKilojoulesPerKilogram !== undefined &&
            `work ${plainNumber(thing.workKilojoulesPerKilogram)} kJ per kg`,
          thing.bowlGrams !== undefined && `bowl ${plainMass(thing.bowlGrams)}`,
        ]),
      }
    case 'fridge':
      return {
        title: thing.name,
        facts: facts([
          `${degrees(thing.celsius)} ${sign}`,
          thing.places !== undefined && `${thing.places} tubs`,
          thing.freezerCelsius !== undefined && `freezer ${degrees(thing.freezerCelsius)} ${sign}`,
        ]),
      }
    case 'tap':
      return {
        title: thing.name,
        facts: `${degrees(thing.coldestCelsius)} to ${degrees(thing.warmestCelsius)} ${sign}`,
      }
    case 'flour':
      return {
        title: thing.name,
        facts: facts([
          thing.lot,
          thing.moisturePercent !== undefined && `moisture ${plainNumber(thing.moisturePercent)} %`,
          thing.proteinPercent !== undefined && `protein ${plainNumber(thing.proteinPercent)} %`,
        ]),
      }
  }
}
