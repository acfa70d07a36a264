import { expect, test } from 'vitest'
import { civilTime, clockTime } from '@/core/wording/words/civil-time.ts'
import { dateText, momentText } from '@/core/wording/words/date-text.ts'

test('a moment as the wall shows it, east and west of Greenwich', () => {
  const newYear = Date.UTC(2026, 11, 31, 23, 45)
  expect(civilTime(newYear, 'Europe/Vienna')).toEqual({
    year: 2027,
    month: 1,
    day: 1,
    hour: 0,
    minute: 45,
  })
  expect(momentText(newYear, 'America/St_Johns')).toBe('31 December 2026 at 20:15')
  expect(dateText(newYear, 'Asia/Kathmandu')).toBe('1 January 2027')
  expect(clockTime(newYear, 'Asia/Kathmandu')).toBe('05:30')
})

test('the hour that summer time leaves out and the one it gives twice', () => {
  // Directive 2000/84/EC: the change is at 01:00 UTC, here on 29 March and 25 October 2026.
  const at = (month: number, day: number, hour: number) =>
    clockTime(Date.UTC(2026, month, day, hour, 30), 'Europe/Vienna')
  expect([at(2, 29, 0), at(2, 29, 1)]).toEqual(['01:30', '03:30'])
  expect([at(9, 25, 0), at(9, 25, 1)]).toEqual(['02:30', '02:30'])
})

test('a zone that is not known is read as UTC', () => {
  expect(momentText(Date.UTC(2026, 4, 2, 6, 5), 'Somewhere/Else')).toBe('2 May 2026 at 06:05')
})
