import { type NumberBounds, type NumberTrouble, readNumber } from './read-number.ts'
import { celsiusFromFahrenheit } from './temperature.ts'

export type TemperatureUnit = 'C' | 'F'

const fahrenheit = ['f', '°f', '° f', 'deg f']
const celsius = ['c', '°c', '° c', 'deg c']
const degrees = ['°', 'deg']

/**
 * A temperature as typed, in degrees Celsius; a unit behind it wins over `unitWhenNone`. Bounds are in Celsius:
 * -80 to 700 unless narrowed.
 */
export function readTemperature(
  text: string,
  unitWhenNone: TemperatureUnit = 'C',
  { least = -80, most = 700 }: Pick<NumberBounds, 'least' | 'most'> = {},
): { ok: true; celsius: number } | NumberTrouble {
  const read = readNumber(text, { units: [...fahrenheit, ...celsius, ...degrees] })
  if (!read.ok) return read
  const { value, unit } = read
  const isFahrenheit =
    unit === null || degrees.includes(unit) ? unitWhenNone === 'F' : fahrenheit.includes(unit)
  const degreesCelsius = isFahrenheit ? celsiusFromFahrenheit(value) : value
  if (degreesCelsius < least) return { ok: false, reason: 'too-small', least }
  if (degreesCelsius > most) return { ok: false, reason: 'too-large', most }
  return { ok: true, celsius: degreesCelsius }
}
