import { expect, test } from 'vitest'
import { rangeText } from '@/core/wording/fairness/fairness-sentence.ts'
import { minutesBetween, minutesText } from '@/core/wording/words/duration-text.ts'

test('minutes are said as people say them: hours from two on, days from two on', () => {
  expect(minutesText(44.6, 0)).toBe('45 min')
  expect(minutesText(119, 0)).toBe('119 min')
  // 2282 min = 38 h 2 min
  expect(minutesText(2282, 0)).toBe('38 h 2 min')
  expect(minutesBetween({ low: 4.2, high: 5.1 }, 1)).toBe('4.2 to 5.1 min')
  expect(minutesBetween({ low: 100, high: 125 }, 0)).toBe('100 min to 2 h 5 min')
  expect(minutesBetween({ low: 300, high: 300.2 }, 0)).toBe('5 h')
  expect(rangeText({ low: 300, high: 320 }, 0, 'g')).toBe('300 to 320 g')
})
