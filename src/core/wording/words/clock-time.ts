import { type CivilClock, civilTime } from './civil-time.ts'

/** The hour as the kitchen clock shows it, "14:52", in the zone the session was begun in. */
export function clockTime(at: number, zone: string, clock: CivilClock = civilTime): string {
  const { hour, minute } = clock(at, zone)
  return `${twoDigits(hour)}:${twoDigits(minute)}`
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0')
}
