import { expect, test } from 'vitest'
import { levelsBetween } from '@/core/trial/levels-between.ts'

test.each([
  [66, 82, 5, [66, 70, 74, 78, 82]],
  [1.4, 2.6, 4, [1.4, 1.8, 2.2, 2.6]],
  [57, 72, 4, [57, 62, 67, 72]],
  [0.1, 0.7, 3, [0.1, 0.4, 0.7]],
  [1, 2, 4, [1, 1.33, 1.67, 2]],
  [2.6, 1.4, 3, [2.6, 2, 1.4]],
  [-18, 4, 3, [-18, -7, 4]],
])('from %d to %d in %d', (first, last, count, values) => {
  expect(levelsBetween(first, last, count)).toEqual({ ok: true, values })
})

test.each([
  [1, 2, 1, 'too-few'],
  [1, 2, 2.5, 'too-few'],
  [1, 2, 13, 'too-many'],
  [2, 2, 3, 'same-ends'],
  [Number.NaN, 2, 3, 'not-a-number'],
])('refuses %d to %d in %d: %s', (first, last, count, reason) => {
  expect(levelsBetween(first, last, count)).toEqual({ ok: false, reason })
})
