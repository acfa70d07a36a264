import ICAL from 'ical.js'
import { expect, it } from 'vitest'
import type { RunRow } from '@/core/clock-plan/run-sheet.ts'
import { calendarFile } from '@/core/wording/plan/calendar-file.ts'

const row = (id: string, beginSeconds: number, change: Partial<RunRow> = {}): RunRow => ({
  ...{
    id,
    key: id,
    beginSeconds,
    endSeconds: beginSeconds + 90,
    dough: 1,
    batchId: 'b-1',
    unitIds: ['b-1'],
  },
  ...{ stepId: 'fold', name: 'Fold', repeat: 1, repeats: 2, pieces: null, do: 'work' },
  ...{ waitSeconds: 1800, waitsForMark: false },
  ...change,
})

// The night of 28 to 29 March 2026, in which clocks go from 2:00 to 3:00 in Vienna: 18:00 there is 17:00 UTC, and 10:00 the next
// morning is 8:00 UTC, 15 h later.
const originAt = Date.UTC(2026, 2, 28, 17)
const rows = [
  row('b-1 fold 1', 0),
  row('b-1 bake 1 out', 15 * 3600, { do: 'pull', name: 'Bake', repeats: 1, waitSeconds: null }),
]
const day = { trialId: 'trial-a', session: 1, question: 'How wet?', rows, originAt }

/** Read by a package that had no part in the writing. */
function readBack(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text))
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component)
    const [alarm] = component.getAllSubcomponents('valarm')
    const trigger = alarm?.getFirstPropertyValue('trigger') as unknown as ICAL.Time
    return {
      uid: event.uid,
      title: event.summary,
      at: event.startDate.toJSDate().getTime(),
      until: event.endDate.toJSDate().getTime(),
      rings: trigger.toJSDate().getTime(),
      sequence: event.sequence,
    }
  })
}

it('puts every event and its alarm on its second, a night into summer time included', () => {
  const events = readBack(calendarFile({ ...day, writtenAt: 1_700_000_000_000 }))
  expect(events.map(({ at, rings, title }) => [at, rings, title])).toEqual([
    [originAt, originAt, 'Fold 1 of 2, dough 1'],
    [Date.UTC(2026, 2, 29, 8), Date.UTC(2026, 2, 29, 8), 'Out of the oven, dough 1'],
  ])
  expect(events.every(({ at, until }) => until - at === 90_000)).toBe(true)
})

it('keeps the ids when the plan is made again, and counts on, so that a second import moves the events', () => {
  const before = readBack(calendarFile({ ...day, writtenAt: 1_700_000_000_000 }))
  const later = {
    ...day,
    rows: rows.map((one) => ({ ...one, beginSeconds: one.beginSeconds + 60 })),
  }
  const after = readBack(calendarFile({ ...later, writtenAt: 1_700_000_060_000 }))
  expect(after.map(({ uid }) => uid)).toEqual(before.map(({ uid }) => uid))
  expect(new Set(before.map(({ uid }) => uid)).size).toBe(2)
  expect(after.every(({ sequence }, at) => sequence > (before[at]?.sequence ?? 0))).toBe(true)
})
