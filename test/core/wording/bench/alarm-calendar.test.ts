import { expect, it } from 'vitest'
import { alarmCalendar } from '@/core/wording/bench/alarm-calendar.ts'

const day = { trialId: 'trial-1', session: 2, writtenAt: Date.UTC(2026, 2, 28, 20) }

it('writes each alarm at its moment in UTC, over the night in which summer time begins too', () => {
  // In Zurich 29 March 2026, 07:30 summer time is 05:30 UTC.
  const text = alarmCalendar({
    ...day,
    alarms: [
      { key: 'b-1 proof 1 end', at: Date.UTC(2026, 2, 29, 5, 30), text: 'B: Proof is over' },
    ],
  })
  expect(text).toContain('DTSTART:20260329T053000Z')
  expect(text).toMatch(/TRIGGER[^\r\n]*:20260329T053000Z/)
  expect(text).toContain('SUMMARY:B: Proof is over')
})

it('keeps the id of an alarm when its moment moves, so that a later file moves it', () => {
  const uid = (at: number) =>
    /UID:(.*)/.exec(
      alarmCalendar({ ...day, alarms: [{ key: 'b-1 proof 1 end', at, text: 'x' }] }),
    )?.[1]
  expect(uid(day.writtenAt + 1e6)).toBe(uid(day.writtenAt + 2e6))
  expect(uid(day.writtenAt)).toBeTruthy()
})
