import { useContext } from 'react'
import { TemperatureUnitContext } from './temperature-unit-context.ts'
import { type TemperatureUnit, temperatureText } from './temperature-words.ts'

/** The unit in which temperatures are shown and typed now. */
export function useTemperatureUnit(): TemperatureUnit {
  return useContext(TemperatureUnitContext)
}

/** How a temperature is written now, with its sign. */
export function useTemperatureText(): (celsius: number) => string {
  const unit = useTemperatureUnit()
  return (celsius) => temperatureText(celsius, unit)
}
