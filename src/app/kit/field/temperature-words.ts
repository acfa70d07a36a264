import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import {
  celsiusDifferenceFromFahrenheit,
  celsiusFromFahrenheit,
  fahrenheitDifferenceFromCelsius,
  fahrenheitFromCelsius,
} from '@/core/units/temperature.ts'
import type { DegreeWords } from '@/core/wording/weighing/water-text.ts'

export type TemperatureUnit = 'celsius' | 'fahrenheit'

/** What is kept of a temperature typed in °F: a hundredth of a degree Celsius, finer than any kitchen thermometer. */
const keptStepCelsius = 0.01

/** The sign behind a temperature. */
export function degreeSign(unit: TemperatureUnit): '°C' | '°F' {
  return unit === 'celsius' ? '°C' : '°F'
}

/** A temperature as a number in the person's unit; in °F to a tenth, so that what was typed comes back as it was. */
export function shownDegrees(celsius: number, unit: TemperatureUnit): number {
  return unit === 'celsius' ? celsius : roundToStep(fahrenheitFromCelsius(celsius), 0.1)
}

/** A typed temperature in °C. */
export function typedCelsius(typed: number, unit: TemperatureUnit): number {
  return unit === 'celsius' ? typed : roundToStep(celsiusFromFahrenheit(typed), keptStepCelsius)
}

/** A difference of temperatures as a number in the person's unit. */
export function shownSteps(celsius: number, unit: TemperatureUnit): number {
  return unit === 'celsius' ? celsius : roundToStep(fahrenheitDifferenceFromCelsius(celsius), 0.1)
}

/** A typed difference in Celsius steps. */
export function typedSteps(typed: number, unit: TemperatureUnit): number {
  return unit === 'celsius'
    ? typed
    : roundToStep(celsiusDifferenceFromFahrenheit(typed), keptStepCelsius)
}

/** A temperature to some decimals in the person's unit, without its sign: for tables that name the unit once. */
export function degreesText(celsius: number, unit: TemperatureUnit, decimals: number): string {
  return decimalText(unit === 'celsius' ? celsius : fahrenheitFromCelsius(celsius), decimals)
}

/** The same for a difference of temperatures. */
export function stepsText(celsius: number, unit: TemperatureUnit, decimals: number): string {
  return decimalText(
    unit === 'celsius' ? celsius : fahrenheitDifferenceFromCelsius(celsius),
    decimals,
  )
}

/** A temperature with its sign, as it was typed. */
export function temperatureText(celsius: number, unit: TemperatureUnit): string {
  return `${plainNumber(shownDegrees(celsius, unit))} ${degreeSign(unit)}`
}

/** What a field that takes a temperature needs, in the person's unit. */
export interface TemperatureEntry {
  unit: '°C' | '°F'
  shown: (celsius: number | null) => number | null
  celsius: (typed: number) => number
  check: (typed: number) => string | undefined
  /** The key of an unfinished text: one typed in °F is not read again as °C. */
  draftKey: (key: string) => string
}

/** A field for temperatures from one end to another, °C, in the person's unit. */
export function temperatureEntry(
  unit: TemperatureUnit,
  { leastCelsius, mostCelsius }: { leastCelsius: number; mostCelsius: number },
): TemperatureEntry {
  const sign = degreeSign(unit)
  const ends = [leastCelsius, mostCelsius].map((end) => plainNumber(shownDegrees(end, unit)))
  return {
    unit: sign,
    shown: (celsius) => (celsius === null ? null : shownDegrees(celsius, unit)),
    celsius: (typed) => typedCelsius(typed, unit),
    check: (typed) => {
      const celsius = typedCelsius(typed, unit)
      return celsius >= leastCelsius && celsius <= mostCelsius
        ? undefined
        : `Write a number from ${ends.join(' to ')} ${sign}.`
    },
    draftKey: (key) => (unit === 'celsius' ? key : `${key}/fahrenheit`),
  }
}

/** How the words of the core write temperatures in the person's unit. */
export function degreeWords(unit: TemperatureUnit): DegreeWords {
  return {
    sign: degreeSign(unit),
    degrees: (celsius, decimals) => degreesText(celsius, unit, decimals),
    steps: (celsius, decimals) => stepsText(celsius, unit, decimals),
  }
}
