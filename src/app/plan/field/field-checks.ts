import {
  betweenText,
  massAboveNothingText,
  moreThanNothingText,
  nameMissingText,
  nameTooLongText,
  wholeBetweenText,
} from '@/core/wording/words/field-check-text.ts'

type Check = (value: number) => string | undefined

/** A number that must lie between two ends; the message says which. */
export function between(least: number, most: number, unit = ''): Check {
  const words = betweenText(least, most, unit)
  return (value) => (value >= least && value <= most ? undefined : words)
}

/** A whole number between two ends. */
export function wholeBetween(least: number, most: number): Check {
  const words = wholeBetweenText(least, most)
  return (value) => (Number.isInteger(value) && value >= least && value <= most ? undefined : words)
}

/** More than nothing, up to an end. */
export function moreThanNothing(most: number, unit = ''): Check {
  const words = moreThanNothingText(most, unit)
  return (value) => (value > 0 && value <= most ? undefined : words)
}

/** A name that can be seen; the message says what to write. */
export function visibleName(what: string): (text: string) => string | undefined {
  return (text) => {
    if (!/\S/.test(text)) return nameMissingText(what)
    return text.length > 200 ? nameTooLongText(200) : undefined
  }
}

export const percentCheck = between(0, 1000, '%')
export const shareCheck = between(0, 100, '%')
/** Grams, above nothing; said in the person's unit. */
export const gramsCheck: Check = (grams) =>
  grams > 0 && grams <= 1_000_000 ? undefined : massAboveNothingText(1_000_000)
export const minutesCheck = between(0, 86_400, 'min')
export const levelCheck = between(-100_000, 100_000)
