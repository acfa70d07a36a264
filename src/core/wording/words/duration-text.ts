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
