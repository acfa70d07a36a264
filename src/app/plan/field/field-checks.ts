import { plainNumber, withUnit } from '@/core/units/number-text.ts'

type Check = (value: number) => string | undefined

/** A number that must lie between two ends; the message says which. */
export function between(least: number, most: number, unit = ''): Check {
  const words = `Write a number from ${plainNumber(least)} to ${withUnit(plainNumber(most), unit)}.`
  return (value) => (value >= least && value <= most ? undefined : words)
}

/** A whole number between two ends. */
export function wholeBetween(least: number, most: number): Check {
  const words = `Write a whole number from ${plainNumber(least)} to ${plainNumber(most)}.`
  return (value) => (Number.isInteger(value) && value >= least && value <= most ? undefined : words)
}

/** More than nothing, up to an end. */
export function moreThanNothing(most: number, unit = ''): Check {
  const words = `Write a number above 0, up to ${withUnit(plainNumber(most), unit)}.`
  return (value) => (value > 0 && value <= most ? undefined : words)
}

/** A name that can be seen; the message says what to write. */
export function visibleName(what: string): (text: string) => string | undefined {
  return (text) => {
    if (!/\S/.test(text)) return `Write ${what}; it cannot stay empty.`
    return text.length > 200 ? 'Shorten this to 200 characters.' : undefined
  }
}

export const percentCheck = between(0, 1000, '%')
export const shareCheck = between(0, 100, '%')
export const gramsCheck = moreThanNothing(1_000_000, 'g')
export const minutesCheck = between(0, 86_400, 'min')
export const levelCheck = between(-100_000, 100_000)
