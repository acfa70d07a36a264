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
