import type { Discrimination } from '@/core/findings/findings-document.ts'
import { decimalText, probabilityText } from '@/core/units/number-text.ts'
import { levelNameText } from '@/core/wording/words/level-text.ts'

/** Can people tell two levels apart? The count, chance, and the share of people who do, with its interval. */
export function tellApartSentence(test: Discrimination, unit: string): string {
  const [a, b] = test.between
  const guess = test.test === 'triangle' ? 'one in three' : 'one in two'
  const percent = (share: number) => decimalText(share * 100, 0)
  const { share, low, high } = test.discriminators
  return `${test.correct} of ${test.n} told ${levelNameText(a, unit)} from ${levelNameText(b, unit)}, where guessing gives ${guess} (p ${probabilityText(test.p)}). About ${percent(share)} % of people tell them apart, somewhere between ${percent(low)} and ${percent(high)} %.`
}
