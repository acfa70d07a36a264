import { manner } from './manner.ts'
import { decimalText, plainNumber } from './number-text.ts'
import { roundToStep } from './round-to-step.ts'
import { fahrenheitDifferenceFromCelsius, fahrenheitFromCelsius } from './temperature.ts'

/** The sign of the unit that temperatures are written in. */
export function ownDegreeSign(): '°C' | '°F' {
  return manner().temperature === 'celsius' ? '°C' : '°F'
}

/** A temperature (°C) to some decimals in the person's unit, without its sign. */
export function degreesFigure(celsius: number, decimals: number): string {
  return decimalText(
    manner().temperature === 'celsius' ? celsius : fahrenheitFromCelsius(celsius),
    decimals,
  )
}

/** The same for a difference of two temperatures: no offset of 32. */
export function stepsFigure(celsius: number, decimals: number): string {
  return decimalText(
    manner().temperature === 'celsius' ? celsius : fahrenheitDifferenceFromCelsius(celsius),
    decimals,
  )
}

/** A temperature as it was typed, without its sign; in °F to a tenth. */
export function plainDegreesFigure(celsius: number): string {
  return plainNumber(
    manner().temperature === 'celsius' ? celsius : roundToStep(fahrenheitFromCelsius(celsius), 0.1),
  )
}

/** The same with its sign. */
export function plainDegrees(celsius: number): string {
  return `${plainDegreesFigure(celsius)} ${ownDegreeSign()}`
}

/** From one temperature to another, with the sign once: "20 to 25 °C". */
export function degreesRange(least: number, most: number, decimals = 0): string {
  return `${degreesFigure(least, decimals)} to ${degreesFigure(most, decimals)} ${ownDegreeSign()}`
}

/** A temperature to some decimals with its sign. */
export function degreesWithSign(celsius: number, decimals: number): string {
  return `${degreesFigure(celsius, decimals)} ${ownDegreeSign()}`
}

/** A difference of two temperatures to some decimals with its sign. */
export function stepsWithSign(celsius: number, decimals: number): string {
  return `${stepsFigure(celsius, decimals)} ${ownDegreeSign()}`
}
