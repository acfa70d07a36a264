import { manner } from './manner.ts'
import { gramsFrom } from './mass.ts'
import { decimalText, keptNumber, withOwnMark } from './number-text.ts'
import { stepDecimals } from './round-to-step.ts'

const gramsInOunce = gramsFrom(1, 'oz')
/** From here on a scale's step has no more decimals than a person would read: it comes from another unit. */
const mostStepDecimals = 4

/** The unit that weights are shown and typed in. */
export function massUnit(): 'g' | 'oz' {
  return manner().mass === 'ounce' ? 'oz' : 'g'
}

/** The same in a word, as a heading names it. */
export function massName(): 'grams' | 'ounces' {
  return manner().mass === 'ounce' ? 'ounces' : 'grams'
}

/** Grams as a number in the person's unit; in ounces to a ten-thousandth (3 mg), so that what was typed comes back as it was. */
export function shownMass(grams: number): number {
  return manner().mass === 'ounce' ? Number((grams / gramsInOunce).toFixed(4)) : grams
}

/** The same as fine as it is, for what is never shown: it comes back by `typedGrams` as the grams it was. */
export function exactMass(grams: number): number {
  return manner().mass === 'ounce' ? grams / gramsInOunce : grams
}

/** A number that was typed in the person's unit, in grams. */
export function typedGrams(typed: number): number {
  return manner().mass === 'ounce' ? Number((typed * gramsInOunce).toPrecision(12)) : typed
}

/**
 * Decimals that a weight is written with in the person's unit: those its scale shows; without a scale one in grams, below
 * 10 g two. In ounces two more than in grams, which keeps a step of the scale apart, or those of the scale's own step in ounces.
 */
export function massDecimals(grams: number, resolutionGrams: number | null): number {
  const inGrams = gramsDecimals(grams, resolutionGrams)
  if (manner().mass === 'gram') return inGrams
  const step = resolutionGrams === null ? null : ownOunces(resolutionGrams)
  return step === null ? inGrams + 2 : stepDecimals(step)
}

/** Decimals of the same in grams, in which it is kept. */
export function gramsDecimals(grams: number, resolutionGrams: number | null): number {
  if (resolutionGrams === null) return Math.abs(grams) < 10 ? 2 : 1
  const decimals = stepDecimals(resolutionGrams)
  if (decimals <= mostStepDecimals) return decimals
  return Math.max(0, Math.ceil(-Math.log10(resolutionGrams)) + 1)
}

/** The step of a scale that reads in ounces (1/8 or 0.05 oz), in ounces; null for one that reads in grams. */
function ownOunces(resolutionGrams: number): number | null {
  const ounces = Number((resolutionGrams / gramsInOunce).toPrecision(7))
  return stepDecimals(ounces) <= mostStepDecimals ? ounces : null
}

/** A weight to so many decimals of the person's unit, without the unit: for tables that name it once. */
export function massFigure(grams: number, decimals: number): string {
  return decimalText(manner().mass === 'ounce' ? grams / gramsInOunce : grams, decimals)
}

/** A weight as its scale shows it, without the unit. */
export function weightFigure(grams: number, resolutionGrams: number | null = null): string {
  return massFigure(grams, massDecimals(grams, resolutionGrams))
}

/** The same with its unit: "372 g", "13.12 oz". */
export function weightText(grams: number, resolutionGrams: number | null = null): string {
  return `${weightFigure(grams, resolutionGrams)} ${massUnit()}`
}

/** A weight to the decimals that it has in grams, with its unit; in ounces two more, which is as fine. */
export function massText(grams: number, gramDecimals: number): string {
  return `${roundedMass(grams, gramDecimals)} ${massUnit()}`
}

/** The same without its unit. */
export function roundedMass(grams: number, gramDecimals: number): string {
  return massFigure(grams, gramDecimals + (manner().mass === 'ounce' ? 2 : 0))
}

/** A difference of two weights with its sign, without its unit. */
export function signedMass(grams: number, gramDecimals: number): string {
  const figure = roundedMass(grams, gramDecimals)
  return grams > 0 && /[1-9]/.test(figure) ? `+${figure}` : figure
}

/** A weight as it was typed, with its unit; one in grams that is read in ounces to a hundredth, a light one finer. */
export function plainMass(grams: number): string {
  return `${plainFigure(grams)} ${massUnit()}`
}

function plainFigure(grams: number): string {
  if (massUnit() === 'g') return withOwnMark(keptNumber(grams))
  return withOwnMark(keptNumber(Number(shownMass(grams).toFixed(Math.abs(grams) < 10 ? 4 : 2))))
}

/** The step of a scale in the unit that the scale itself reads in: "0.05 oz" or "1 g", whatever else is written in. */
export function scaleStepText(resolutionGrams: number): string {
  const ounces = manner().mass === 'ounce' ? ownOunces(resolutionGrams) : null
  return ounces === null
    ? `${withOwnMark(keptNumber(resolutionGrams))} g`
    : `${withOwnMark(keptNumber(ounces))} oz`
}

/** From one weight to another as they were typed, the unit once. */
export function massRange(leastGrams: number, mostGrams: number): string {
  return `${plainFigure(leastGrams)} to ${plainMass(mostGrams)}`
}

/** A heavy weight, such as all dough of a day, in kilograms or pounds. */
export function heavyText(grams: number, decimals: number): string {
  return manner().mass === 'ounce'
    ? `${decimalText(grams / gramsFrom(1, 'lb'), decimals)} lb`
    : `${decimalText(grams / 1000, decimals)} kg`
}
