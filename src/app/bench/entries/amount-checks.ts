import {
  type Ends,
  isOutside,
  possibleFolds,
  possibleGrams,
  possibleRise,
  possibleSize,
  possibleViewCentimetres,
} from '@/core/session/press/usual-readings.ts'
import { betweenText, massBetweenText } from '@/core/wording/words/field-check-text.ts'

/** What keeps a typed number from being logged, in words that name the mend; undefined when it can stand. */
export function endsCheck(ends: Ends, unit: string): (value: number) => string | undefined {
  const words = betweenText(ends.least, ends.most, unit)
  return (value) => (isOutside(value, ends) ? words : undefined)
}

export const amountCheck = {
  grams: (grams: number) =>
    isOutside(grams, possibleGrams)
      ? massBetweenText(possibleGrams.least, possibleGrams.most)
      : undefined,
  folds: endsCheck(possibleFolds, ''),
  rise: endsCheck(possibleRise, '%'),
  size: endsCheck(possibleSize, ''),
  view: endsCheck(possibleViewCentimetres, 'cm'),
  any: (_value: number) => undefined,
}
