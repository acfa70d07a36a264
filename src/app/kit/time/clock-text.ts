/** A duration as a running clock shows it: "04:32", from an hour on "1:04:32". Negative durations read as their size. */
export function clockText(seconds: number): string {
  const whole = Math.floor(Math.abs(seconds))
  const two = (n: number) => String(n).padStart(2, '0')
  const hours = Math.floor(whole / 3600)
  const rest = `${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`
  return hours > 0 ? `${hours}:${rest}` : rest
}
