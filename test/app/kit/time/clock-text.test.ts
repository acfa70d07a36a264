import { expect, test } from 'vitest'
import { clockText, shortClockText } from '@/app/kit/time/clock-text.ts'

test('a clock counts minutes and seconds, hours from one on, and whole days past four', () => {
  expect(clockText(272.9)).toBe('04:32')
  expect(clockText(-272)).toBe('04:32')
  // 1 h 4 min 32 s = 3872 s
  expect(clockText(3872)).toBe('1:04:32')
  expect(clockText(99 * 3600 + 59 * 60 + 59)).toBe('99:59:59')
  // 216 h 40 min = nine days and 40 min
  expect(clockText(216 * 3600 + 2400)).toBe('9 days')
})

test('where little room is a clock has no seconds from an hour on', () => {
  expect(shortClockText(3599)).toBe('59:59')
  expect(shortClockText(3600 + 4 * 60 + 59)).toBe('1h04')
  // A night of 12 h 27 min and 8 s.
  expect(shortClockText(12 * 3600 + 27 * 60 + 8)).toBe('12h27')
  expect(shortClockText(-(10 * 3600 + 4 * 60))).toBe('10h04')
  expect(shortClockText(216 * 3600)).toBe('9 days')
})
