import type { OddWeight } from '@/core/session/press/odd-weight.ts'
import { decimalText } from '@/core/units/number-text.ts'
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
  const off = `${decimalText(Math.abs(offGrams), offDecimals(offGrams))} g`
  const said = level
    ? `As it stands the level would be ${withUnit(decimalText(level.would, 1))}, planned ${withUnit(decimalText(level.planned, 1))}.`
    : ''
  if (offGrams < 0)
    return { mend: `${off} too little: add ${off} of ${name}, then weigh again.`, beside: said }
  const ways = bringsBack.map(
    ({ key, moreGrams }) =>
      `${decimalText(Math.abs(moreGrams), offDecimals(moreGrams))} g ${moreGrams > 0 ? 'more' : 'less'} of ${nameOf(key)}`,
  )
  const back = ways.length === 0 ? '' : ` The level comes back with ${listText(ways, 'or')}.`
  return { mend: `${off} too much.${back}`, beside: said }
}

const offDecimals = (grams: number) => (Math.abs(grams) < 10 ? 2 : 1)
