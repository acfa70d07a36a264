import { type CivilClock, type CivilTime, civilTime } from './civil-time.ts'

/**
 * The moment (UTC ms) at which calendar and clock show a time in a zone; a day past the end of its month runs on into the next.
 * Of an hour that comes twice the first or second is taken as the search falls; one that is left out is moved past the gap.
 */
export function civilMoment(
  wanted: CivilTime,
  zone: string,
  clock: CivilClock = civilTime,
): number {
  const asUtc = ({ year, month, day, hour, minute }: CivilTime) =>
    Date.UTC(year, month - 1, day, hour, minute)
  let at = asUtc(wanted)
  for (let look = 0; look < 3; look += 1) at += asUtc(wanted) - asUtc(clock(at, zone))
  return at
}

/** Calendar and wall clock of a zone, both ways: what day it is at a moment (UTC ms), and the moment of a time of day. */
export function wallClock(zone: string, clock: CivilClock = civilTime) {
  return {
    dayOf: (at: number) => clock(at, zone),
    momentOf: (day: { year: number; month: number; day: number }, minutes: number) =>
      civilMoment({ ...day, hour: Math.floor(minutes / 60), minute: minutes % 60 }, zone, clock),
  }
}
