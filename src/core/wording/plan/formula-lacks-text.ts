import type { AddedForFactor } from '@/core/plan-edits/formula/added-for-factor.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { factorKindNames } from './factor-kind-name.ts'

/** What will be added to a formula before it is used, and how to keep it out. */
export function formulaLacksText(added: AddedForFactor): string {
  const { names, levels, byLine, liquids } = added
  const what = listText(names)
  const percents = levels.map(plainNumber)
  const at = percents.length > 0 ? ` at ${listText(percents)} % of flour` : ''
  const will = `The factor is “${factorKindNames[added.factor]}”, and this formula lacks what it moves: ${what} will be added${at}.`
  const [liquid] = liquids
  const own = byLine ? 'write your own on a line here, or ' : ''
  const instead = liquid
    ? `To move the ${liquid} instead, use the formula, then set the factor’s kind to “${factorKindNames.ingredient}”`
    : `To keep it out, ${own}use the formula and then set the factor to another kind`
  return `${will} ${instead}: what was added then goes again.`
}

/** That another formula stands in the plan, and what the factor added to it. */
export function formulaReplacedText(names: readonly string[]): string {
  return names.length === 0
    ? 'Formula replaced'
    : `Formula replaced; ${listText(names)} added for the factor`
}
