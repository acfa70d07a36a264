import { createEvents, type EventAttributes } from 'ics'
import type { RunRow } from '@/core/clock-plan/run-sheet.ts'
import { runRowText, runWaitText } from './run-sheet-text.ts'

interface CalendarOf {
  /** The trial's id and the session's number: an event keeps its id when the plan is made again. */
  trialId: string
  session: number
  question: string
  rows: readonly RunRow[]
  /** UTC ms of the rows' second 0. */
  originAt: number
  /** When the file is written, UTC ms. */
  writtenAt: number
}

/**
 * The day as a calendar file (RFC 5545): an event for each thing to do, with an alarm at its moment, in UTC so that every
 * calendar shows it by its own zone. Ids are stable, so that importing a newer plan moves the events instead of doubling them.
 * Written by the package ics.
 */
export function calendarFile(day: CalendarOf): string {
  const events = day.rows.map((row): EventAttributes => {
    const wait = runWaitText(row)
    return {
      uid: `${day.trialId}-${day.session}-${row.key.replaceAll(/[^A-Za-z0-9]+/g, '-')}@evenhand`,
      title: runRowText(row),
      description: [day.question, wait === '' ? '' : `Then ${wait}.`].join('\n').trim(),
      start: day.originAt + row.beginSeconds * 1000,
      end: day.originAt + Math.max(row.endSeconds, row.beginSeconds + 60) * 1000,
      ...{
        startInputType: 'utc',
        startOutputType: 'utc',
        endInputType: 'utc',
        endOutputType: 'utc',
      },
      alarms: [
        {
          action: 'display',
          description: runRowText(row),
          trigger: day.originAt + row.beginSeconds * 1000,
        },
      ],
      productId: 'evenhand',
      sequence: Math.floor(day.writtenAt / 1000) % 2_000_000_000,
      timestamp: day.writtenAt,
    } as EventAttributes
  })
  const { error, value } = createEvents(events)
  if (error || !value) throw new Error(`no calendar was written: ${String(error)}`)
  return value
}
