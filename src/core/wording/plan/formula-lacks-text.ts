import { plainNumber } from '@/core/units/number-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'

/** What the factor of a plan adds to another formula, because the formula lacks what the factor moves. */
export interface AddedForFactor {
  /** The factor's kind as the page's menu writes it. */
  factor: string
  /** The names of what is added: "Water". */
  names: readonly string[]
  /** The levels it is then moved through, in percent of flour. */
  levels: readonly number[]
  /** Whether a pasted line can give it; a preferment is none. */
  byLine: boolean
  /** Liquids of the formula, which the factor does not move, and the kind of factor that would. */
  liquids: readonly string[]
  movesLiquids: string
}

/** What will be added to a formula before it is used, and how to keep it out. */
export function formulaLacksText(added: AddedForFactor): string {
  const { names, levels, byLine, liquids, movesLiquids } = added
  const what = listText(names)
  const percents = levels.map(plainNumber)
  const at = percents.length > 0 ? ` at ${listText(percents)} % of flour` : ''
  const will = `The factor is “${added.factor}”, and this formula lacks what it moves: ${what} will be added${at}.`
  const [liquid] = liquids
  const own = byLine ? 'write your own on a line here, or ' : ''
  const instead = liquid
    ? `To move the ${liquid} instead, use the formula, then set the factor’s kind to “${movesLiquids}”`
    : `To keep it out, ${own}use the formula and then set the factor to another kind`
  return `${will} ${instead}: what was added then goes again.`
}

/** That another formula stands in the plan, and what the factor added to it. */
export function formulaReplacedText(names: readonly string[]): string {
  return names.length === 0
    ? 'Formula replaced'
    : `Formula replaced; ${listText(names)} added for the factor`
}
