import { celsiusFromFahrenheit } from '@/core/units/temperature.ts'
import type { Factor } from './factor.ts'

/** True where a factor's levels are written in degrees Fahrenheit. */
export function inFahrenheit({ unitOfMeasure }: Pick<Factor, 'unitOfMeasure'>): boolean {
  return /F/i.test(unitOfMeasure)
}

/** A level's oven temperature in °C; it is written in the factor's own unit. */
export function levelCelsius(factor: Pick<Factor, 'unitOfMeasure'>, value: number): number {
  return inFahrenheit(factor) ? celsiusFromFahrenheit(value) : value
}
