import { expect, test } from 'vitest'
import { momentOf, typedTimeOfDay } from '@/core/session/press/time-of-day.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'

const rome = (at: number) => civilTime(at, 'Europe/Rome')

test('a time of day is read as people write it, and what is none is not', () => {
  for (const text of ['14:05', '14.05', '14h05', '1405', ' 14 : 05 '])
    expect(typedTimeOfDay(text), text).toEqual({ hour: 14, minute: 5 })
  expect(typedTimeOfDay('9')).toEqual({ hour: 9, minute: 0 })
  expect(typedTimeOfDay('905')).toEqual({ hour: 9, minute: 5 })
  for (const text of ['', '25:00', '12:60', '12:5', 'noon', '-1', '123456'])
    expect(typedTimeOfDay(text), text).toBeNull()
})

test('it stands for the moment nearest to the entry, over midnight too', () => {
  // 2 May 2026, 22:10 UTC is 00:10 on 3 May in Rome (summer time, two hours ahead).
  const near = Date.UTC(2026, 4, 2, 22, 10)
  expect(momentOf({ hour: 23, minute: 50 }, near, rome)).toBe(Date.UTC(2026, 4, 2, 21, 50))
  expect(momentOf({ hour: 0, minute: 30 }, near, rome)).toBe(Date.UTC(2026, 4, 2, 22, 30))
  expect(momentOf({ hour: 0, minute: 10 }, near + 23_456, rome)).toBe(near + 23_456)
})

test('in the night of the change the nearer of two is taken, and an hour that is left out is another day’s', () => {
  // Summer time in Rome ended on 25 October 2026 at 01:00 UTC (Directive 2000/84/EC): 02:30 was at 00:30 and 01:30 UTC.
  expect(momentOf({ hour: 2, minute: 30 }, Date.UTC(2026, 9, 25, 1, 40), rome)).toBe(
    Date.UTC(2026, 9, 25, 1, 30),
  )
  expect(momentOf({ hour: 2, minute: 30 }, Date.UTC(2026, 9, 25, 0, 20), rome)).toBe(
    Date.UTC(2026, 9, 25, 0, 30),
  )
  // It began on 29 March 2026 at 01:00 UTC: no 02:30 that day. From 01:05 UTC the one on the 30th, at 00:30 UTC, is 23:25 h
  // away, that on the 28th, at 01:30 UTC, 23:35 h.
  const spring = momentOf({ hour: 2, minute: 30 }, Date.UTC(2026, 2, 29, 1, 5), rome)
  expect(spring).toBe(Date.UTC(2026, 2, 30, 0, 30))
})

test('a day is named where a time is not today’s', () => {
  const at = Date.UTC(2026, 4, 2, 6)
  const day = 86_400_000
  // 2 May 2026 was a Saturday.
  expect(dayTime(at, at + 3_600_000, 'Europe/Rome')).toBe('08:00')
  expect(dayTime(at, at + day, 'Europe/Rome')).toBe('Sat 08:00')
  expect(dayTime(at, at - 6 * day, 'Europe/Rome')).toBe('Sat 08:00')
  expect(dayTime(at, at + 7 * day, 'Europe/Rome')).toBe('2 May 08:00')
})
