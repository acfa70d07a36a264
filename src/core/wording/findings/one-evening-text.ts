import type { OneEvening } from '@/core/findings/evidence/conclusion-shape.ts'
import { countText, countWord, listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import type { Naming } from './answer-of-rung.ts'
import { levelInShort } from './named-in-findings.ts'
import type { Spoken } from './shown-sentence.ts'

/** One evening of one taster: the order they put the levels in, and that it says nothing yet of what was changed. */
export function oneEveningHeadline(
  evening: OneEvening,
  spoken: Spoken,
): { shown: string; known: string } {
  const { naming } = spoken
  const { order, blind } = evening
  const known = blind ? 'without knowing which was which' : 'knowing which was which'
  const count = countWord(order.flat().length)
  const alike = order.length < 2
  const chance = alike
    ? ''
    : ` Had the ${count} been alike, one would have come first all the same.`
  return {
    shown: `${orderWords(evening, spoken)}, ${known}.`,
    known: `One evening, one mouth: it says nothing yet of ${midSentence(naming.factor.name)} itself.${chance}`,
  }
}

/** "You liked 56 best, then 60, then 52"; equals together. */
function orderWords({ order }: OneEvening, { name, naming, conclusion }: Spoken): string {
  const named = order.map((ids) => listText(ids.map((id) => levelInShort(id, naming))))
  const what = midSentence(name)
  const likes = what === 'liking'
  const [first = '', ...rest] = named
  if (rest.length === 0)
    return likes ? `You liked ${first} alike` : `You found ${first} alike in ${what}`
  const most = {
    higher: 'highest',
    lower: 'lowest',
    target: 'nearest your aim',
    neither: 'highest',
  }
  const start = likes
    ? `You liked ${first} best`
    : `You put ${first} ${most[conclusion.better]} for ${what}`
  return [start, ...rest.map((each) => `then ${each}`)].join(', ')
}

/** What to bake after one evening alone: the sessions that are still to come as written, or two evenings of a trial of their own. */
export function afterOneEvening(
  { left }: OneEvening,
  { unit }: Pick<Naming, 'unit'>,
): { title: string; text: string } {
  if (left === 0)
    return {
      title: 'Plan two more evenings',
      text: 'Once more, on two evenings that are written down before the first mix: this one gave the hint, they are the test.',
    }
  // Doughs that were mixed apart go through the second session in the opposite order.
  const turned = unit === 'batch' ? ', the last dough first next time' : ''
  return {
    title: `Go on: ${countText(left, 'evening')} to come`,
    text: `Once more, on ${countText(left, 'more evening')}${turned}. As written, all ${countWord(left + 1)} then count.`,
  }
}
