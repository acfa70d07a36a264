import type { CivilTime } from '@/core/wording/words/civil-time.ts'

/** A typed wall-clock moment, "2026-12-05T18:00" or "2026-12-05 18:00"; null where it is none. */
export function civilFromText(text: string): CivilTime | null {
  const found = /^(\d{4})-(\d{2})-(\d{2})[T ](\d{2}):(\d{2})$/.exec(text.trim())
  if (!found) return null
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = found.slice(1).map(Number)
  const back = new Date(Date.UTC(year, month - 1, day, hour, minute))
  const same = back.getUTCMonth() + 1 === month && back.getUTCDate() === day
  return same && hour < 24 && minute < 60 ? { year, month, day, hour, minute } : null
}

/** Quiet hours as typed, "23:00-6:30", in minutes from midnight; null where they are none. */
export function quietFromText(text: string): { fromMinutes: number; toMinutes: number } | null {
  const found = /^(\d{1,2}):(\d{2})-(\d{1,2}):(\d{2})$/.exec(text.trim())
  if (!found) return null
  const [a = 0, b = 0, c = 0, d = 0] = found.slice(1).map(Number)
  if (a > 24 || c > 24 || b > 59 || d > 59) return null
  return { fromMinutes: a * 60 + b, toMinutes: c * 60 + d }
}
