import { expect, test } from 'vitest'
import { otherYeastsText } from '@/core/wording/weighing/yeast-text.ts'

// Facts: fresh to active dry × 0.4, fresh to instant × 0.33 (also × 0.4), active dry to instant × 0.75 (0.33/0.4 = 0.825).
test('the other yeasts stand beside an amount, with the factors and where published ones disagree', () => {
  expect(otherYeastsText(2, 'fresh')).toBe(
    'Usual in its place: 0.66 % instant (× 0.33; also published: × 0.4) or 0.8 % active dry (× 0.4).',
  )
  // 1/0.33 = 3.03, 1/0.4 = 2.5; 1/0.75 = 1.33, 1/0.825 = 1.21.
  expect(otherYeastsText(0.8, 'instant')).toBe(
    'Usual in its place: 1.1 % active dry (× 1.3; also published: × 1.2) or 2.4 % fresh (× 3; also published: × 2.5).',
  )
  expect(otherYeastsText(0, 'instant')).toBe('')
})
