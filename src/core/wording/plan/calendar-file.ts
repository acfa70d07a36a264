import type { RunRow } from '@/core/clock-plan/run-sheet.ts'
import { type AlarmedEvent, alarmedCalendar } from '@/core/wording/words/alarmed-calendar.ts'
import { runRowText, runWaitText } from './run-sheet-text.ts'

interface CalendarOf {
  trialId: string
  session: number
  question: string
  rows: readonly RunRow[]
  /** UTC ms of the rows' second 0. */
  originAt: number
  /** When the file is written, UTC ms. */
  writtenAt: number
}

/** The day as a calendar file: an event for each thing to do, with an alarm at its moment, and what is waited for after it. */
export function calendarFile({ question, rows, originAt, ...of }: CalendarOf): string {
  const events = rows.map((row): AlarmedEvent => {
    const wait = runWaitText(row)
    return {
      key: row.key,
      title: runRowText(row),
      description: [question, wait === '' ? '' : `Then ${wait}.`].join('\n').trim(),
      beginAt: originAt + row.beginSeconds * 1000,
      endAt: originAt + Math.max(row.endSeconds, row.beginSeconds + 60) * 1000,
    }
  })
  return alarmedCalendar({ ...of, events })
}
