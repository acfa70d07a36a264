/** Hour and minute as a clock on the wall shows them. */
export interface TimeOfDay {
  hour: number
  minute: number
}

const written =
  /^\s*(\d{1,2})(?:\s*(?:[:.h]\s*)(\d{2})|(\d{2})|\s*h)?\s*(?:([ap])\.?\s?m\.?|uhr)?\s*$/i

/**
 * A typed time of day: "14:05", "14.05", "14h05", "14h", "1405", "9" for nine o'clock, "10:30 pm", "12 am" for midnight; null for
 * anything else. By 12 hours an hour without am or pm is read as it stands, by 24.
 */
export function typedTimeOfDay(text: string): TimeOfDay | null {
  const found = written.exec(text)
  if (!found) return null
  const typed = Number(found[1])
  const minute = Number(found[2] ?? found[3] ?? 0)
  const half = found[4]?.toLowerCase()
  if (half !== undefined && (typed < 1 || typed > 12)) return null
  const hour = half === undefined ? typed : (typed % 12) + (half === 'p' ? 12 : 0)
  return hour < 24 && minute < 60 ? { hour, minute } : null
}

const day = 24 * 60 * 60 * 1000
const minuteLength = 60_000

/** What the wall clock shows at a moment (UTC ms), in the zone that counts. */
export type WallClock = (at: number) => TimeOfDay

/**
 * The moment nearest to `near` (UTC ms) at which the wall clock shows a time of day, the earlier of two as near; `near` itself
 * where it already shows that minute. Where the clock shows it twice, as in the night when it is set back, the nearer is taken;
 * an hour that is left out in spring is that of the day before or after; null where the clock never shows it.
 */
export function momentOf(time: TimeOfDay, near: number, wall: WallClock): number | null {
  const shows = (at: number) => wall(at).hour === time.hour && wall(at).minute === time.minute
  if (shows(near)) return near
  const start = near - (near % minuteLength)
  for (let away = minuteLength; away <= day; away += minuteLength) {
    if (shows(start - away)) return start - away
    if (shows(start + away)) return start + away
  }
  return null
}
