import { expect, test } from 'vitest'
import { loggedText } from '@/app/bench/log/logged-text.ts'

test('a reading near its plan stands with a tick, one that looks like a slip with its distance', () => {
  expect(loggedText(356, 350)).toBe('✓ 356 g')
  // 99 − 10 = 89 and 0.4 − 4 = −3.6, each more than a tenth of the plan.
  expect(loggedText(99, 10)).toBe('99 g (+89)')
  expect(loggedText(0.4, 4)).toBe('0.4 g (−3.6)')
})
