import { type CivilClock, type CivilTime, civilTime, clockTime } from './civil-time.ts'

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat']
const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ')
const dayMilliseconds = 86_400_000

/**
 * An hour with its day where that is not today's: "14:52", "Sat 07:10", from a week on "2 May 07:10". `now` and `at` in UTC ms;
 * days are those of the wall calendar in `zone`, so a day of summer time with 23 or 25 hours is one day.
 */
export function dayTime(
  at: number,
  now: number,
  zone: string,
  clock: CivilClock = civilTime,
): string {
  const time = clockTime(at, zone, clock)
  const civil = clock(at, zone)
  const days = dayNumber(civil) - dayNumber(clock(now, zone))
  if (days === 0) return time
  if (Math.abs(days) < 7) return `${weekdays[(((dayNumber(civil) + 4) % 7) + 7) % 7]} ${time}`
  return `${dayAndMonth(civil)} ${time}`
}

/** A day of the year, its month cut to three letters: "2 May", "30 Sep". */
export function dayAndMonth({ day, month }: Pick<CivilTime, 'day' | 'month'>): string {
  return `${day} ${months[month - 1]}`
}

/** Days since 1 January 1970, a Thursday. */
function dayNumber({ year, month, day }: CivilTime): number {
  return Math.round(Date.UTC(year, month - 1, day) / dayMilliseconds)
}
