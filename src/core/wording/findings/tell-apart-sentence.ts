import type { Discrimination } from '@/core/findings/findings-document.ts'
import { decimalText, probabilityText } from '@/core/units/number-text.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'

/** Can people tell two levels apart? The count, chance, and the share of people who do, with its interval. */
export function tellApartSentence(test: Discrimination, naming: LevelNaming): string {
  const [a, b] = test.between
  const guess = test.test === 'triangle' ? 'one in three' : 'one in two'
  const percent = (share: number) => decimalText(share * 100, 0)
  const { share, low, high } = test.discriminators
  return `${test.correct} of ${test.n} told ${levelInWords(a, naming)} from ${levelInWords(b, naming)}, where guessing gives ${guess} (p ${probabilityText(test.p)}). About ${percent(share)} % of people tell them apart, somewhere between ${percent(low)} and ${percent(high)} %.`
}
