import { type CivilClock, civilTime, clockTime } from './civil-time.ts'

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** A day as it is written in a report: "2 May 2026", in the zone it was lived in. */
export function dateText(at: number, zone: string, clock: CivilClock = civilTime): string {
  const { day, month, year } = clock(at, zone)
  return `${day} ${months[month - 1]} ${year}`
}

/** A day with the hour: "2 May 2026 at 08:05". */
export function momentText(at: number, zone: string, clock: CivilClock = civilTime): string {
  return `${dateText(at, zone, clock)} at ${clockTime(at, zone, clock)}`
}
