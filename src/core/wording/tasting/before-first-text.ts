import type { BlindView } from '@/core/seal/blind/blind-view.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'

/** What a taster is about to do: "Five samples, one after another, three questions each." */
export function orderText({
  servings,
  questions,
  sets,
  ranking,
}: Pick<BlindView, 'servings' | 'questions' | 'sets' | 'ranking'>): string {
  const asked = questions.length === 0 ? '' : `, ${countText(questions.length, 'question')}`
  const samples =
    servings.length === 1
      ? `One sample${asked}.`
      : `${asSentenceStart(countText(servings.length, 'sample'))}, one after another${asked && `${asked} each`}.`
  const atEnd = [
    ...(ranking ? ['put them in order'] : []),
    ...(sets.length > 0 ? ['tell samples apart'] : []),
  ]
  const last = atEnd.length === 0 ? '' : ` At the end you are asked to ${atEnd.join(' and to ')}.`
  return `${samples}${last} Please do not talk about them until all have finished.`
}

/** Of a sample that nothing is asked of by itself: it is tasted, and kept in mind for what comes at the end. */
export function onlyTastedText({
  ranking,
  sets,
}: Pick<BlindView, 'ranking'> & { sets: readonly unknown[] }): string {
  if (ranking)
    return 'Taste it and keep it in mind: nothing is asked of it alone; when you have tasted all, you put them in order.'
  return sets.length > 0
    ? 'Taste it: nothing is asked of it alone. At the end you are asked to tell samples apart.'
    : 'Taste it: nothing is asked of it alone.'
}

/** What the servings hold, by name: "Contains cereals with gluten and milk." */
export function containsText(allergens: readonly string[]): string {
  return allergens.length === 0
    ? 'No allergen is named by the formula; ask the host what is in it.'
    : `Contains ${listText(allergens)}.`
}

/** The sample before all others; `code` is null where it lies on no numbered plate. */
export function warmUpText(code: string | null): string {
  return `${code === null ? 'First the warm-up piece' : `First the sample marked ${code}`}: taste it as you will taste the others. It is not scored.`
}

/** Between two samples. */
export const refreshText = 'A sip of water, a bite of plain bread.'

/** How every serving is cut and offered alike, in the plan's words; where it says nothing, what there is to agree on. */
export function alikeOnPlates(servingRule: string): string {
  const rule = servingRule.trim()
  return rule === ''
    ? 'The same for all, to be agreed on first: carrier ____, grams ____, slice ____ mm, from where in the loaf ____, crust side ____, temperature ____.'
    : `The same for all: ${rule}`
}
