import type { AnswerScale } from '@/core/trial/response.ts'

/** The pieces to compare with, by their points: “To compare: 3 is the plain roll, 7 the cracker on the saucer.” Empty where there is none. */
export function referencesText(scale: AnswerScale): string {
  const named = (scale.kind === 'nine-point' ? (scale.references ?? []) : [])
    .filter(({ text }) => text.trim() !== '')
    .toSorted((one, other) => one.at - other.at)
  if (named.length === 0) return ''
  const said = named.map(({ at, text }, index) => `${at} ${index === 0 ? 'is ' : ''}${text.trim()}`)
  return `To compare: ${said.join(', ')}.`
}

/** What is true of every piece to compare with: it is eaten too, and is no part of the formula. */
export const referencesEaten =
  'What stands there to compare is eaten too: ask the host what is in it.'
