import { expect, test } from 'vitest'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'

test.each([
  ['Hydration', 'hydration'],
  ['Ease of handling', 'ease of handling'],
  ['TVset', 'TVset'],
  ['DR', 'DR'],
  ['pH of the dough', 'pH of the dough'],
  ['Überhang', 'überhang'],
  ['T65 flour', 'T65 flour'],
  ['', ''],
])('the name “%s” stands within a sentence as “%s”', (typed, within) => {
  expect(midSentence(typed)).toBe(within)
})
