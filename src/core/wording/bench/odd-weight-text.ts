import type { OddWeight } from '@/core/session/press/odd-weight.ts'
import { massText } from '@/core/units/mass-text.ts'
import { decimalsOf, decimalText } from '@/core/units/number-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'

/** A reading that is off, in a baker's words: what is wrong and what mends it, and what it makes of the level. */
export interface OddWeightWords {
  mend: string
  beside: string
}

/** What is said of an odd reading before it is kept; `nameOf` gives the name of a line of the weigh sheet by its key. */
export function oddWeightText(
  { offGrams, level, bringsBack }: OddWeight,
  name: string,
  nameOf: (key: string) => string,
  withUnit: (level: string) => string,
): OddWeightWords {
  const off = massText(Math.abs(offGrams), offDecimals(offGrams))
  const said = level
    ? `As it stands the level would be ${withUnit(decimalText(level.would, 1))}, planned ${withUnit(decimalText(level.planned, 1))}.`
    : ''
  if (offGrams < 0)
    return { mend: `${off} too little: add ${off} of ${name}, then weigh again.`, beside: said }
  const ways = bringsBack.map(
    ({ key, moreGrams }) =>
      `${massText(Math.abs(moreGrams), offDecimals(moreGrams))} ${moreGrams > 0 ? 'more' : 'less'} of ${nameOf(key)}`,
  )
  const back = ways.length === 0 ? '' : ` The level comes back with ${listText(ways, 'or')}.`
  return { mend: `${off} too much.${back}`, beside: said }
}

const offDecimals = (grams: number) => (Math.abs(grams) < 10 ? 2 : 1)

/** How a reading stands to its target (grams), in words: "45 g short: add 45 g", "12 g over", "as planned". */
export function differenceText(grams: number, target: number): { words: string; off: boolean } {
  const decimals = Math.max(decimalsOf(grams), decimalsOf(target))
  const off = massText(Math.abs(grams - target), Math.min(decimals, 2))
  if (!/[1-9]/.test(off)) return { words: 'as planned', off: false }
  return grams < target
    ? { words: `${off} short: add ${off}`, off: true }
    : { words: `${off} over`, off: true }
}
