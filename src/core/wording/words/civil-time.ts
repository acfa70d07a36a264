import { manner } from '@/core/units/manner.ts'

/** A moment as a calendar and a clock on the wall show it: month 1 to 12, hour 0 to 23. */
export interface CivilTime {
  year: number
  month: number
  day: number
  hour: number
  minute: number
}

/** What calendar and clock showed at `at` (UTC milliseconds) in `zone` (an IANA name; one that is not known here is read as UTC). */
export type CivilClock = (at: number, zone: string) => CivilTime

const clocks = new Map<string, Intl.DateTimeFormat>()

/** By the language service, which knows every zone at once. */
export const civilTime: CivilClock = (at, zone) => {
  const clock = clocks.get(zone) ?? clockOf(zone)
  clocks.set(zone, clock)
  const shown = new Map(clock.formatToParts(at).map(({ type, value }) => [type, Number(value)]))
  const part = (type: Intl.DateTimeFormatPartTypes) => shown.get(type) as number
  return {
    year: part('year'),
    month: part('month'),
    day: part('day'),
    hour: part('hour'),
    minute: part('minute'),
  }
}

function clockOf(zone: string): Intl.DateTimeFormat {
  const shape = {
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    hourCycle: 'h23',
  } as const
  try {
    return new Intl.DateTimeFormat('en', { ...shape, timeZone: zone })
  } catch (failure) {
    if (!(failure instanceof RangeError)) throw failure
    return new Intl.DateTimeFormat('en', { ...shape, timeZone: 'UTC' })
  }
}

/** The hour as the kitchen clock shows it, "14:52" or "2:52 pm", in the zone the session was begun in. */
export function clockTime(at: number, zone: string, clock: CivilClock = civilTime): string {
  return hourText(clock(at, zone))
}

/** A time of day as the person reads it: "14:52", by 12 hours "2:52 pm"; midnight is 12:00 am, noon 12:00 pm. */
export function hourText({
  hour,
  minute,
  second,
}: Pick<CivilTime, 'hour' | 'minute'> & { second?: number }): string {
  const past = twoDigits(minute) + (second === undefined ? '' : `:${twoDigits(second)}`)
  if (manner().hours === '24') return `${twoDigits(hour)}:${past}`
  return `${hour % 12 || 12}:${past} ${hour < 12 ? 'am' : 'pm'}`
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0')
}
