import { spoons } from './spoons.ts'
import { percentAmount, statedAmounts } from './stated-amount.ts'

const inBrackets = /\([^()]*\)/gu
const between = /(?<!\d),|,(?!\d)|[;+&]|\s(?:and|plus)\s/iu
const eggs = /(?<![\p{L}\d.,])\d+\s+(?:\p{L}+\s+)?(?:eggs?|yolks?)(?!\p{L})/iu
/** A percent of this says what the ingredient is like, not how much of it is taken. */
const words = '(?<!\\p{L})(?:protein|fat|extraction|hydration|cocoa|ash|moisture|alcohol)(?!\\p{L})'
const described = new RegExp(words, 'iu')
const percentOfDough = new RegExp(String.raw`%(?!\s*(?:\p{L}+\s+)?${words})`, 'giu')

/** Whether a line names more than one ingredient, each with a measure of its own: a weight, percent, spoon or egg. */
export function namesSeveral(text: string): boolean {
  const bare = text.replace(inBrackets, ' ')
  const percents = bare.match(percentOfDough) ?? []
  return percents.length > 1 || bare.split(between).filter(isMeasured).length > 1
}

function isMeasured(part: string): boolean {
  if (eggs.test(part)) return true
  const masses = statedAmounts(part)
  const percents = percentAmount.test(part) && !described.test(part)
  if (masses.length === 0 && !percents && !spoons.test(part)) return false
  const left = masses
    .reduceRight((all, { from, to }) => `${all.slice(0, from)} ${all.slice(to)}`, part)
    .replace(percentAmount, ' ')
    .replace(spoons, ' ')
  return /\p{L}/u.test(left)
}
