/** The hour as the kitchen clock shows it, "14:52", in the zone the session was begun in. */
export function clockTime(at: number, zone: string): string {
  return new Intl.DateTimeFormat('en-GB', { timeStyle: 'short', timeZone: zone }).format(at)
}
