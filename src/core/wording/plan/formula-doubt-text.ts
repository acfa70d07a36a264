import type { FormulaDoubt } from '@/core/formula/formula-from-text.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'

/** Why a formula of which lines were not understood is not taken: what is missing would make another dough. */
export function halfReadText(refused: number): string {
  const lines = asSentenceStart(countText(refused, 'line'))
  return `${lines} not understood. Without ${refused === 1 ? 'it' : 'them'} this may be another dough: mend each in the text, or leave it out.`
}

/** What a pasted formula says twice and not alike, and which of the two is taken. */
export function formulaDoubtText(doubt: FormulaDoubt): string {
  if (doubt.what === 'total')
    return `The total says ${plainNumber(doubt.statedGrams)} g, but the lines come to ${decimalText(doubt.linesGrams, 0)} g. Is a line missing or wrong? The lines are taken.`
  const weighed = decimalText(doubt.weighedPercent, 1)
  return `${doubt.name}: ${plainNumber(doubt.statedPercent)} % stands beside it, but its weight is ${weighed} % of the flour. Is one of them wrong? The weight is taken.`
}
