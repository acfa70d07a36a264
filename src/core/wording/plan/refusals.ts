import type { AsideReason } from '@/core/formula/pasted/line-purpose.ts'
import type { QuestionReason } from '@/core/formula/pasted/pasted-text.ts'
import type { DealtSession } from '@/core/session/deal-session.ts'
import { type LevelsBetween, mostLevels } from '@/core/trial/levels-between.ts'

const refusals: Record<QuestionReason, string> = {
  'no-amount': 'How much? Write an amount with its unit, such as 10 g.',
  'no-name': 'What is it? Write its name beside the amount.',
  'not-a-number': 'Write the amount in digits.',
  range: 'Which of the two? Write one amount, not a range.',
  'two-separators': 'Write one decimal point or comma.',
  'two-readings': 'This number can be read two ways. Which is meant?',
  'too-small': 'Write an amount above 0.',
  'too-large': 'Write an amount below a tonne.',
  'several-amounts': 'Two amounts of one ingredient. Which is meant?',
  'of-how-many': 'Of each, or in all? Write the whole amount, such as 2 x 250 g.',
  'volume-of-no-water': 'Weigh this one: a millilitre of it is not a gram.',
  'cups-and-spoons': 'Weigh this one in grams: spoons, cups and packets differ.',
  'pieces-not-weighed': 'How heavy? Write a unit: g, kg, oz, lb, dl, ml or %.',
  'one-or-the-other': 'One or the other: which goes in?',
  'if-wanted': 'Does it go in?',
  'unknown-kind': 'This name is not known here. Choose what it is to the dough.',
  'hydration-unsaid':
    'Flour and water already mixed: how much water on its flour? Write its hydration beside it.',
  'build-unsaid': 'What is in it? Write its flour, water and the rest under a heading of its own.',
  'in-a-sentence':
    'Amounts in a sentence. Write each ingredient with its amount, one after another.',
  'percent-without-flour': 'Mixed with weights; write this one as a weight.',
  'percent-of-which-flour':
    'Of the flour in the dough, or of all flour with the preferment’s? Write this one as a weight.',
  'weight-without-flour':
    'No flour has a weight here. Write the flour in grams too, or this one in %.',
  'no-flour-at-all': 'There is no flour to take it of. Write the flour on a line of its own.',
  duplicate: 'This name stands above already. Give it another name.',
  'more-than-built': 'The dough takes more of it than its build makes. Which is meant?',
}

/** Why a pasted line was not taken, as a question with its mend. */
export function lineRefusal(reason: QuestionReason): string {
  return refusals[reason]
}

const asides: Record<AsideReason, string> = {
  title: 'a title',
  method: 'method',
  bake: 'baking',
  time: 'a time',
  yield: 'the yield, held against the weights',
  servings: 'the yield, which says no weight of dough',
  dusting: 'not in the dough',
  topping: 'not in the dough',
  heading: 'a heading',
  checked: 'held against the lines',
  ruling: 'a ruled line',
}

/** Why a pasted line is set aside. */
export function asideText(why: AsideReason): string {
  return asides[why]
}

/** Why a series of levels cannot be made, with the mend. */
export function seriesRefusal({ reason }: Extract<LevelsBetween, { ok: false }>): string {
  return reason === 'same-ends'
    ? 'First and last are the same. Write two different numbers.'
    : `Write two different numbers and a count from 2 to ${mostLevels}.`
}

/** Why no session is dealt from a plan whose last change is not in the notebook. */
export const planNotKeptText =
  'The last change of the plan is not kept yet. Keep it first, by Try again at the head of this page.'

/** Why a session could not be dealt, with the mend. */
export function dealRefusal(refused: Extract<DealtSession, { ok: false }>): string {
  return refused.reason === 'needs-two-levels'
    ? 'A session compares two levels at least; add another.'
    : `It needs ${refused.asked} serving codes and only ${refused.left} three-digit codes are left. Plan fewer flights.`
}
