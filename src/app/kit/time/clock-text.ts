/** From so many hours on a clock counts whole days: its figures fit their place, and nobody waits by the second. */
const hoursInDays = 100

/** A duration as a running clock shows it: "04:32", from an hour on "1:04:32", past four days "9 days". Negative durations read as their size. */
export function clockText(seconds: number): string {
  const whole = Math.floor(Math.abs(seconds))
  const two = (n: number) => String(n).padStart(2, '0')
  const hours = Math.floor(whole / 3600)
  if (hours >= hoursInDays) return `${Math.floor(hours / 24)} days`
  const rest = `${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`
  return hours > 0 ? `${hours}:${rest}` : rest
}

/** The same where little room is, as on a tab of the rail: from an hour on without seconds, "1h04". */
export function shortClockText(seconds: number): string {
  const minutes = Math.floor(Math.abs(seconds) / 60)
  const hours = Math.floor(minutes / 60)
  if (hours < 1 || hours >= hoursInDays) return clockText(seconds)
  return `${hours}h${String(minutes % 60).padStart(2, '0')}`
}
