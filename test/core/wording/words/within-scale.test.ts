import { expect, test } from 'vitest'
import { widestDifference, withinScale } from '@/core/wording/words/within-scale.ts'

test('two means from 1 to 9 differ by at most 8, from 1 to 5 by at most 4', () => {
  expect(widestDifference('nine-point')).toBe(9 - 1)
  expect(widestDifference('just-about-right')).toBe(5 - 1)
  expect(widestDifference('measured')).toBeNull()
  expect(widestDifference(undefined)).toBeNull()
})

test.each([
  ['an interval with room', -2, 3, 'nine-point', { low: -2, high: 3, whole: false }],
  ['one beyond an end', -2, 9.5, 'nine-point', { low: -2, high: 8, whole: false }],
  ['one beyond both', -37.8, 32.3, 'nine-point', { low: -8, high: 8, whole: true }],
  ['one as wide as it gets', -8, 8, 'nine-point', { low: -8, high: 8, whole: true }],
  ['a short scale', -5, 3, 'just-about-right', { low: -4, high: 3, whole: false }],
  ['a measurement', -37.8, 32.3, 'measured', { low: -37.8, high: 32.3, whole: false }],
] as const)('%s', (_, low, high, scale, expected) => {
  expect(withinScale({ low, high }, scale)).toEqual(expected)
})
