import { typedTimeOfDay } from '@/core/session/press/time-of-day.ts'
import type { CivilTime } from '@/core/wording/words/civil-time.ts'

/** A typed wall-clock moment, "2026-12-05T18:00" or "2026-12-05 6 pm"; null where it is none. */
export function civilFromText(text: string): CivilTime | null {
  const found = /^(\d{4})-(\d{2})-(\d{2})[T ](.+)$/.exec(text.trim())
  if (!found) return null
  const time = typedTimeOfDay(found[4] as string)
  const [year = 0, month = 0, day = 0] = found.slice(1, 4).map(Number)
  const back = new Date(Date.UTC(year, month - 1, day))
  const same = back.getUTCMonth() + 1 === month && back.getUTCDate() === day
  return same && time ? { year, month, day, ...time } : null
}

/** Quiet hours as typed, "23:00-6:30" or "11 pm – 6:30 am", in minutes from midnight; null where they are none. */
export function quietFromText(text: string): { fromMinutes: number; toMinutes: number } | null {
  const [from, to, ...more] = text.split(/[-–]/).map(minutesFromText)
  if (from == null || to == null || more.length > 0) return null
  return { fromMinutes: from, toMinutes: to }
}

/** Minutes from midnight; "24:00" is midnight too. */
function minutesFromText(text: string): number | null {
  if (text.trim() === '24:00') return 0
  const time = typedTimeOfDay(text)
  return time && time.hour * 60 + time.minute
}
