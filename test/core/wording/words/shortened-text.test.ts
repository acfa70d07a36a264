import { expect, test } from 'vitest'
import { shortenedText } from '@/core/wording/words/shortened-text.ts'

// By hand: "How wet should" has 14 letters, "How wet" 7.
test.each([
  ['How wet should it be?', 21, 'How wet should it be?'],
  ['How wet should it be?', 20, 'How wet should it…'],
  ['How wet, say, is it?', 13, 'How wet…'],
  ['Doughmadethewholenight', 10, 'Doughmade…'],
])('%s in %i letters', (text, most, short) => {
  expect(shortenedText(text, most)).toBe(short)
  expect(short.length).toBeLessThanOrEqual(most)
})
