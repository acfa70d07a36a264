import { clockTime } from './clock-time.ts'

/** A day as it is written in a report: "2 May 2026", in the zone it was lived in. */
export function dateText(at: number, zone: string): string {
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: zone }).format(at)
}

/** A day with the hour: "2 May 2026 at 08:05". */
export function momentText(at: number, zone: string): string {
  return `${dateText(at, zone)} at ${clockTime(at, zone)}`
}
