import { civilMoment } from './civil-moment.ts'
import { type CivilClock, civilTime } from './civil-time.ts'

/** Calendar and wall clock of a zone, both ways: what day it is at a moment (UTC ms), and the moment of a time of day. */
export function wallClock(zone: string, clock: CivilClock = civilTime) {
  return {
    dayOf: (at: number) => clock(at, zone),
    momentOf: (day: { year: number; month: number; day: number }, minutes: number) =>
      civilMoment({ ...day, hour: Math.floor(minutes / 60), minute: minutes % 60 }, zone, clock),
  }
}
