import { alarmedCalendar } from '@/core/wording/words/alarmed-calendar.ts'

interface AlarmCalendar {
  trialId: string
  session: number
  /** UTC ms. */
  writtenAt: number
  alarms: readonly { key: string; at: number; text: string }[]
}

/** The alarms that are still to come as a calendar file, each an event of a minute. Names no level. */
export function alarmCalendar({ alarms, ...of }: AlarmCalendar): string {
  const events = alarms.map(({ key, at, text }) => ({
    ...{ key, title: text },
    ...{ beginAt: at, endAt: at + 60_000 },
  }))
  return alarmedCalendar({ ...of, events })
}
