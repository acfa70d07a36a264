import type { ReadFormulaLine } from '@/core/formula/formula-from-text.ts'

type Reason = Extract<ReadFormulaLine, { ok: false }>['reason']

const refusals: Record<Reason, string> = {
  'no-amount': 'Write an amount with its unit, such as 10 g.',
  'no-name': 'Write what it is beside the amount.',
  'not-a-number': 'Write the amount in digits.',
  fraction: 'Write the fraction as a decimal, such as 0.5.',
  range: 'Write one amount, not a range.',
  'two-separators': 'Write one decimal point or comma.',
  'two-readings': 'Thousands or a decimal? Write it as 1200 or as 1.2.',
  'too-small': 'Write an amount above 0.',
  'too-large': 'Write an amount below a tonne.',
  'several-amounts':
    'More than one amount in this line. Give each ingredient a line of its own, with one amount.',
  'of-how-many': 'Of each, or in all? Write the whole amount, such as 2 x 250 g.',
  'volume-of-no-water': 'Weigh this one: a millilitre of it is not a gram.',
  'cups-and-spoons': 'Weigh this one in grams: cups and spoons differ.',
  'pieces-not-weighed': 'Write a unit: g, kg, oz, lb, ml or %.',
  'percent-without-flour': 'Mixed with weights; write this one as a weight.',
  'weight-without-flour':
    'No flour has a weight here. Write the flour in grams too, or this one in %.',
  'no-flour-at-all': 'There is no flour to take it of. Write the flour on a line of its own.',
  preferment:
    'This is flour and water already mixed: count both in their own lines here. Then add it under the formula, as a preferment.',
  duplicate: 'This name stands above already. Give it another name.',
}

/** Why a pasted line was not taken, with the mend. */
export function lineRefusal(reason: Reason): string {
  return refusals[reason]
}
