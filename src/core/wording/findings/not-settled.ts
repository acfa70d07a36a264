import { isPresent } from '@/core/findings/reason.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { cautionSentence } from './caution-sentence.ts'
import { levelInWords } from './named-in-findings.ts'
import type { Spoken } from './shown-sentence.ts'

/** What the trial leaves open, a sentence each: levels not shown to be as good, what may have done it, whom it cannot speak of. */
export function notSettledTexts(spoken: Spoken): string[] {
  const { conclusion, naming, levels } = spoken
  const { asGood, rung, byTasters, expectation } = conclusion
  const open = isPresent(asGood)
    ? asGood.levels.filter(({ level, passes }) => !passes && level !== conclusion.ending.level)
    : []
  const some = open.length > 0 && open.length < levels.length
  return [
    some && isPresent(asGood)
      ? `Whether ${listText(
          open.map(({ level }) => levelInWords(level, naming)),
          'or',
        )} would do as well: not shown within your margin of ${plainNumber(asGood.margin)}.`
      : '',
    rung === 'factor'
      ? cautionSentence(spoken)
      : `What ${naming.factor.name} does whenever it is made again: that takes two sessions or more.`,
    expectation === 'not-settled' ? 'What was expected before the mix.' : '',
    byTasters
      ? 'Other people, another flour, another oven: nothing was asked of them.'
      : 'Another flour, another oven: nothing was asked of them.',
  ].filter((text) => text !== '')
}
