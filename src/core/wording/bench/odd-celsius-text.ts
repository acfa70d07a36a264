import { isOutside, type TemperatureOf, usualCelsius } from '@/core/session/press/usual-readings.ts'
import { temperatureName } from './event-text.ts'

/** What is said of a temperature (°C) outside of what a kitchen usually reads, before it is kept; null of one within. */
export function oddCelsiusText(
  of: TemperatureOf,
  celsius: number,
  degrees: (celsius: number) => string,
): { mend: string; beside: string } | null {
  const usual = usualCelsius(of)
  if (!isOutside(celsius, usual)) return null
  const range = `${degrees(usual.least)} to ${degrees(usual.most)}`
  return {
    mend: `${temperatureName(of)} at ${degrees(celsius)}? It usually lies between ${range}.`,
    beside: 'Look at the thermometer again, or keep it if it is so.',
  }
}
