import type { FormulaDoubt } from '@/core/formula/pasted/doubts.ts'
import { massText, plainMass } from '@/core/units/mass-text.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'

/** Why a formula of which lines were not understood is not taken: what is missing would make another dough. */
export function halfReadText(refused: number): string {
  const lines = asSentenceStart(countText(refused, 'question'))
  return `${lines} open. Without ${refused === 1 ? 'its answer' : 'their answers'} this may be another dough: answer in the text, or leave the line out.`
}

const tenth = (value: number) => decimalText(value, 1)

/** What a pasted formula says twice and not alike, or leaves open, and what is taken. */
export function formulaDoubtText(doubt: FormulaDoubt): string {
  switch (doubt.what) {
    case 'total':
      return doubt.of === 'dough'
        ? `The total says ${plainMass(doubt.statedGrams)}, but the lines come to ${massText(doubt.linesGrams, 0)}. Is a line missing or wrong? The lines are taken.`
        : `All ${doubt.of} is said to be ${plainMass(doubt.statedGrams)}, but the lines hold ${massText(doubt.linesGrams, 0)}. Is a line missing or wrong? The lines are taken.`
    case 'total-percent':
      return `The total says ${plainNumber(doubt.statedPercent)} %, but the lines come to ${tenth(doubt.linesPercent)} %. Is a line missing or wrong? The lines are taken.`
    case 'hydration':
      return `The hydration is said to be ${plainNumber(doubt.statedPercent)} %, but the lines hold ${tenth(doubt.linesPercent)} % water. Is a line missing or wrong? The lines are taken.`
    case 'prefermented':
      return `${plainNumber(doubt.statedPercent)} % of the flour is said to ferment ahead, but the lines put ${tenth(doubt.linesPercent)} % there. The lines are taken.`
    case 'pieces':
      return `${plainNumber(doubt.pieces)} pieces of ${plainMass(doubt.eachGrams)} are ${massText(doubt.pieces * doubt.eachGrams, 0)}, but the lines make ${massText(doubt.linesGrams, 0)} of dough. The lines are taken.`
    case 'preferment-total':
      return `${doubt.name} is said to be ${plainMass(doubt.statedGrams)}, but its lines come to ${massText(doubt.linesGrams, 0)}. The lines are taken.`
    case 'preferment-share':
      return `The dough takes ${plainMass(doubt.takenGrams)} of ${doubt.name}, but its parts come to ${massText(doubt.partsGrams, 0)}. They are taken in that ratio, ${plainMass(doubt.takenGrams)} in all.`
    case 'more-than-built':
      return `${doubt.name} makes ${massText(doubt.builtGrams, 0)}, but the dough takes ${massText(doubt.takenGrams, 0)}. Its build is taken larger, to make what the dough takes.`
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
