import { decimalText } from '@/core/units/number-text.ts'

/** A length of time as a baker says it: "45 s", "6 min", "6 min 30 s", "1 h 20 min", "2 days 3 h". Seconds in. */
export function durationText(seconds: number): string {
  const whole = Math.round(Math.abs(seconds))
  const sign = seconds < 0 && whole > 0 ? '−' : ''
  if (whole < 60) return `${sign}${whole} s`
  if (whole < 3600) return sign + pair(Math.floor(whole / 60), 'min', whole % 60, 's')
  const minutes = Math.round(whole / 60)
  if (minutes < 48 * 60) return sign + pair(Math.floor(minutes / 60), 'h', minutes % 60, 'min')
  const hours = Math.round(minutes / 60)
  return sign + pair(Math.floor(hours / 24), 'days', hours % 24, 'h')
}

function pair(large: number, largeUnit: string, rest: number, restUnit: string): string {
  return rest === 0 ? `${large} ${largeUnit}` : `${large} ${largeUnit} ${rest} ${restUnit}`
}

/** From here on minutes are said as hours and days: nobody thinks in 2282 min. */
const mostMinutes = 120

/** Minutes as a baker says them: so many decimals of a minute up to two hours, then "2 h 6 min", from two days on "2 days 3 h". */
export function minutesText(minutes: number, decimals: number): string {
  return Math.abs(minutes) < mostMinutes
    ? `${decimalText(minutes, decimals)} min`
    : durationText(minutes * 60)
}

/** From so many minutes to so many: "4.2 to 5.1 min", "2 h to 38 h"; one where both are the same when written. */
export function minutesBetween(
  { low, high }: { low: number; high: number },
  decimals: number,
): string {
  const [from, to] = [minutesText(low, decimals), minutesText(high, decimals)]
  if (from === to) return from
  const unitOnce = from.endsWith(' min') && Math.abs(high) < mostMinutes
  return `${unitOnce ? from.slice(0, -' min'.length) : from} to ${to}`
}
