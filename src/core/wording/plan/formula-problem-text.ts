import type { FormulaTrouble } from '@/core/formula/formula-problem.ts'
import type { MovedFormula } from '@/core/trial/moved-formula.ts'
import { massText } from '@/core/units/mass-text.ts'
import { plainNumber } from '@/core/units/number-text.ts'

/** What is wrong with a formula, with the mend, in one sentence for the field it stands at. */
export function formulaProblemText(trouble: FormulaTrouble): string {
  switch (trouble.reason) {
    case 'no-ingredients':
      return 'The formula is empty: add flour and water first.'
    case 'no-flour':
      return 'There is no flour: every percentage is of flour, so add one.'
    case 'no-water':
      return 'There is no water in the formula. Is that meant?'
    case 'no-dough':
      return 'This makes no dough: enter an amount above zero.'
    case 'flours-do-not-sum':
      return `The flours add up to ${rounded(trouble.sumPercent)} %; make it 100 %.`
    case 'not-a-number':
      return 'Enter a number.'
    case 'negative-percent':
      return `${rounded(trouble.percent)} % is below zero; enter zero or more.`
    case 'percent-past-sense':
      return `${rounded(trouble.percent)} % is far more than the usual ${rounded(trouble.usualMostPercent)} %. Is the decimal point in its place?`
    case 'nameless-ingredient':
      return 'Give this ingredient a name.'
    case 'duplicate-ingredient':
      return `${trouble.name} stands twice; give one of them another name or take it out.`
    case 'hydration-unusual':
      return `${rounded(trouble.hydrationPercent)} % water is outside the usual ${rounded(trouble.leastPercent)} to ${rounded(trouble.mostPercent)} %. Is that meant?`
    case 'preferment-part-missing':
      return 'The preferment names an ingredient that the formula does not hold; choose another.'
    case 'preferment-flour-does-not-sum':
      return `The preferment’s flours add up to ${rounded(trouble.sumPercent)} %; make it 100 %.`
    case 'preferment-without-flour':
      return 'The preferment has no flour, so it cannot be sized; add one.'
    case 'preferment-flour-past-all':
      return `The preferments take ${rounded(trouble.sumPercent)} % of the flour; together they can take 100 % at most.`
    case 'preferment-holds-more':
      return `The preferments hold ${massText(trouble.prefermentGrams, 1)} of ${trouble.name}, but the whole dough only ${massText(trouble.overallGrams, 1)}; lower the share or raise the percentage.`
  }
}

/** Why a formula cannot be brought to a level. */
export function movedFormulaText(trouble: Extract<MovedFormula, { ok: false }>): string {
  switch (trouble.reason) {
    case 'level-without-value':
      return 'Give this level a value.'
    case 'no-water':
      return 'The formula has no water for this level to change; add one.'
    case 'factor-names-nothing':
      return 'The factor names an ingredient that the formula no longer holds; choose another.'
    case 'below-other-water':
      return `Other water already makes ${rounded(trouble.otherWaterPercent)} %; a level cannot be below it.`
    case 'taken-flour-runs-out':
      return `The flour that gives way runs out at ${rounded(trouble.mostPercent)} %; choose a lower level or another flour.`
  }
}

function rounded(value: number): string {
  return plainNumber(Math.round(value * 100) / 100)
}
