import type { FormulaDoubt } from '@/core/formula/pasted/doubts.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'

/** Why a formula of which lines were not understood is not taken: what is missing would make another dough. */
export function halfReadText(refused: number): string {
  const lines = asSentenceStart(countText(refused, 'question'))
  return `${lines} open. Without ${refused === 1 ? 'its answer' : 'their answers'} this may be another dough: answer in the text, or leave the line out.`
}

const whole = (value: number) => decimalText(value, 0)
const tenth = (value: number) => decimalText(value, 1)

/** What a pasted formula says twice and not alike, or leaves open, and what is taken. */
export function formulaDoubtText(doubt: FormulaDoubt): string {
  switch (doubt.what) {
    case 'total':
      return doubt.of === 'dough'
        ? `The total says ${plainNumber(doubt.statedGrams)} g, but the lines come to ${whole(doubt.linesGrams)} g. Is a line missing or wrong? The lines are taken.`
        : `All ${doubt.of} is said to be ${plainNumber(doubt.statedGrams)} g, but the lines hold ${whole(doubt.linesGrams)} g. Is a line missing or wrong? The lines are taken.`
    case 'total-percent':
      return `The total says ${plainNumber(doubt.statedPercent)} %, but the lines come to ${tenth(doubt.linesPercent)} %. Is a line missing or wrong? The lines are taken.`
    case 'hydration':
      return `The hydration is said to be ${plainNumber(doubt.statedPercent)} %, but the lines hold ${tenth(doubt.linesPercent)} % water. Is a line missing or wrong? The lines are taken.`
    case 'prefermented':
      return `${plainNumber(doubt.statedPercent)} % of the flour is said to ferment ahead, but the lines put ${tenth(doubt.linesPercent)} % there. The lines are taken.`
    case 'pieces':
      return `${plainNumber(doubt.pieces)} pieces of ${plainNumber(doubt.eachGrams)} g are ${whole(doubt.pieces * doubt.eachGrams)} g, but the lines make ${whole(doubt.linesGrams)} g of dough. The lines are taken.`
    case 'preferment-total':
      return `${doubt.name} is said to be ${plainNumber(doubt.statedGrams)} g, but its lines come to ${whole(doubt.linesGrams)} g. The lines are taken.`
    case 'more-than-built':
      return `${doubt.name} makes ${whole(doubt.builtGrams)} g, but the dough takes ${whole(doubt.takenGrams)} g. Its build is taken larger, to make what the dough takes.`
    case 'flours-percent':
      return `The flours come to ${tenth(doubt.percent)} %, not 100. Is one missing? They are taken in these shares.`
    case 'yeast-form':
      return `“${doubt.name}”: fresh, dry or instant is not said. It is taken as instant; choose another form at the ingredient.`
    case 'several-columns':
      return 'More than one column of weights. The first is taken.'
    case 'parts-and-whole':
      return `The final dough and the preferments do not come to the whole in ${doubt.name}: ${tenth(doubt.partsAmount)} against ${tenth(doubt.wholeAmount)}. The whole is taken.`
    default:
      return percentDoubt(doubt)
  }
}

function percentDoubt(doubt: Extract<FormulaDoubt, { what: 'percent' }>): string {
  const weighed = tenth(doubt.weighedPercent)
  return `${doubt.name}: ${plainNumber(doubt.statedPercent)} % stands beside it, but its weight is ${weighed} % of the flour. Is one of them wrong? The weight is taken.`
}
