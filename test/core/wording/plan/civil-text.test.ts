import { expect, test } from 'vitest'
import { plainManner, writtenAs } from '@/core/units/manner.ts'
import { civilFromText, quietFromText } from '@/core/wording/plan/civil-text.ts'
import { minutesOfDayText, readAsText } from '@/core/wording/words/time-of-day-text.ts'

const twelve = { ...plainManner, hours: '12' } as const

test.each(['2026-12-05T18:30', '2026-12-05 18:30', ' 2026-12-05 6:30 pm', '2026-12-05 18h30'])(
  '“%s” is half past six in the evening of 5 December',
  (text) => {
    expect(civilFromText(text)).toEqual({ year: 2026, month: 12, day: 5, hour: 18, minute: 30 })
  },
)

test.each(['2026-02-30 18:30', '2026-13-01 18:30', '2026-12-05', '2026-12-05 25:00', '5/12 18:30'])(
  '“%s” is no moment',
  (text) => expect(civilFromText(text)).toBeNull(),
)

test.each([
  ['23:00-6:30', 23 * 60, 390],
  ['11 pm – 6:30 am', 23 * 60, 390],
  ['22h-06h', 22 * 60, 360],
  ['22:00-24:00', 22 * 60, 0],
])('“%s” are quiet hours', (text, fromMinutes, toMinutes) => {
  expect(quietFromText(text)).toEqual({ fromMinutes, toMinutes })
})

test.each(['23:00', '23:00-6:30-7:00', '23:75-6:30', 'none'])('“%s” are none', (text) => {
  expect(quietFromText(text)).toBeNull()
})

test('minutes of a day are written in the person’s own form, and another form is read back in it', () => {
  expect([0, 390, 720, 1110].map(minutesOfDayText)).toEqual(['00:00', '06:30', '12:00', '18:30'])
  const byTwelve = writtenAs(twelve, () => [0, 390, 720, 1110].map(minutesOfDayText))
  expect(byTwelve).toEqual(['12:00 am', '6:30 am', '12:00 pm', '6:30 pm'])
  expect(readAsText('18:30', 1110)).toBeUndefined()
  expect(readAsText('6.30 pm', 1110)).toBe('Read as 18:30.')
  expect(writtenAs(twelve, () => readAsText('6:30', 390))).toBe('Read as 6:30 am.')
})
