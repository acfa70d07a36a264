import { massRange, plainMass } from '@/core/units/mass-text.ts'
import { plainNumber, withUnit } from '@/core/units/number-text.ts'

/** Between which ends a number lies. */
export const betweenText = (least: number, most: number, unit = '') =>
  `Write a number from ${plainNumber(least)} to ${withUnit(plainNumber(most), unit)}.`

/** The same of weights, from grams, in the person's unit. */
export const massBetweenText = (leastGrams: number, mostGrams: number) =>
  `Write a number from ${massRange(leastGrams, mostGrams)}.`

export const massAboveNothingText = (mostGrams: number) =>
  `Write a number above 0, up to ${plainMass(mostGrams)}.`

export const wholeBetweenText = (least: number, most: number) =>
  `Write a whole number from ${plainNumber(least)} to ${plainNumber(most)}.`

export const moreThanNothingText = (most: number, unit = '') =>
  `Write a number above 0, up to ${withUnit(plainNumber(most), unit)}.`

/** That a number must be there, by the field's label. */
export const numberMissingText = (label: string) => `Fill in a number: ${label.toLowerCase()}.`

/** That a name must be there; `what` says of what: "the step's name". */
export const nameMissingText = (what: string) => `Write ${what}; it cannot stay empty.`

export const nameTooLongText = (most: number) => `Shorten this to ${most} characters.`
