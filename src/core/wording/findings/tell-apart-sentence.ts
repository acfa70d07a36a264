import type { Discrimination } from '@/core/findings/findings-document.ts'
import { decimalText, probabilityText } from '@/core/units/number-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'

/** Can people tell two levels apart? The count, chance, and the share of people who do, with its interval. */
export function tellApartSentence(test: Discrimination, naming: LevelNaming): string {
  const [a, b] = test.between
  const guess = test.test === 'triangle' ? 'one in three' : 'one in two'
  const percent = (share: number) => decimalText(share * 100, 0)
  const { share, low, high } = test.discriminators
  const { n, people, sessions } = test
  const by = people < n ? ` of ${countText(people, 'person', 'people')}` : ''
  const pieces =
    sessions > 1
      ? `the pieces of ${countText(sessions, 'session')}`
      : 'these two pieces, and not yet of the levels'
  return `${test.correct} of ${n} answers${by} told the pieces at ${levelInWords(a, naming)} and ${levelInWords(b, naming)} apart, where guessing gives ${guess} (p ${probabilityText(test.p)}). About ${percent(share)} % of such people tell them apart, somewhere between ${percent(low)} and ${percent(high)} %. It speaks of ${pieces}.`
}
