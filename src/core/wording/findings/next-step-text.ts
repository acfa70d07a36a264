import type { NextStep } from '@/core/findings/judged/next-steps.ts'
import type { Follows } from '@/core/trial/trial-record.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import { levelInWords } from './named-in-findings.ts'
import { afterOneEvening } from './one-evening-text.ts'
import type { Spoken } from './shown-sentence.ts'

/** What to do next: a title for the button and a sentence that says why; from the conclusion, so that it says what the headline says. */
export function nextStepText(step: NextStep, spoken: Spoken): { title: string; text: string } {
  const { conclusion, naming } = spoken
  switch (step) {
    case 'adopt': {
      const { level } = conclusion.ending
      const name = level === null ? 'it' : levelInWords(level, naming)
      return {
        title: `Adopt ${name}`,
        text: 'Make it the house formula; the next trial can start from there.',
      }
    }
    case 'confirm':
      return conclusion.shown.some(({ unexpected }) => unexpected)
        ? {
            title: 'Ask it again',
            text: 'It came as a surprise, and surprises are often chance: make the best and your usual again, blind.',
          }
        : {
            title: 'Confirm it',
            text:
              conclusion.better === 'higher' || conclusion.better === 'lower'
                ? 'Make the best and your usual again, blind, before you trust it: the best of several looks better than it is.'
                : 'Make the levels that stand apart again, blind, before you trust it: what stands out of several looks larger than it is.',
          }
    case 'narrow':
      return {
        title: 'Narrow the range',
        text: 'New levels across the stretch where the best may lie, with the control kept.',
      }
    case 'repeat':
      if (conclusion.oneEvening) return afterOneEvening(conclusion.oneEvening, naming)
      return conclusion.rung === 'factor'
        ? { title: 'Repeat it', text: repeatText(spoken) }
        : {
            title: 'Bake again',
            text: 'The same plan once more: one session speaks of its own pieces alone.',
          }
    case 'mend':
      return {
        title: 'Mend the fairness items first',
        text: 'Something else changed along with the factor by more than is fair; the same plan without it would tell more.',
      }
  }
}

function repeatText({ conclusion, naming }: Spoken): string {
  const apart = naming.factor.ordered ? ', or take levels further apart' : ''
  if (conclusion.caution)
    return 'The same plan once more, with all levels equally fresh and in changing order.'
  const { lacks } = conclusion
  if (lacks?.what === 'sessions')
    return `The same plan with ${lacks.enough} sessions in all; sessions are what the answer lacks.`
  if (lacks?.what === 'repeats')
    return `Make each level ${lacks.enough} times in all, in an order that is drawn; better still in sessions that hold every level.`
  if (lacks?.what === 'margin')
    return `More sessions alone will hardly do: ask for a wider margin${apart}.`
  return `The same plan once more${apart}.`
}

/** The steps by their titles in one line: "Adopt 74 %, or narrow the range." */
export function nextTitles(steps: readonly NextStep[], spoken: Spoken): string {
  const titles = steps.map((step) => nextStepText(step, spoken).title)
  return `${listText(
    titles.map((title, index) => (index === 0 ? title : midSentence(title))),
    'or',
  )}.`
}

const followingWays: Readonly<Record<Follows['how'], string>> = {
  confirms: 'asked to confirm',
  narrows: 'asked to narrow down',
  repeats: 'asked again, after',
  copies: 'a copy of',
}

/** How a trial carries another on, such as "asked to narrow down “How wet?”"; the other one may be gone. */
export function followsText(how: Follows['how'], question: string | null): string {
  return `${followingWays[how]} ${question === null ? 'a trial that is no longer here' : `“${question}”`}`
}
