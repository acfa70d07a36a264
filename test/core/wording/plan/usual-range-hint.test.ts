import { expect, test } from 'vitest'
import { usualRangeHint } from '@/core/wording/plan/usual-range-hint.ts'

test('each usual range of what is changed stands with its style, as a hint', () => {
  expect(usualRangeHint('salt')).toBe(
    'Usual in % of flour, as a hint and no limit: bread 1.8 to 2.2.',
  )
  expect(usualRangeHint('hydration')).toContain('bagel 50 to 60, pan bread 58 to 65')
})

test.each([
  ['yeast', 'a quantity whose range is not known by style'],
  ['proof-time', 'no quantity of the formula'],
  ['choice', 'no number at all'],
] as const)('nothing is said of %s: %s', (kind, _) => {
  expect(usualRangeHint(kind)).toBeUndefined()
})
