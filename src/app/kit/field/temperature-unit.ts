import { createContext, useContext } from 'react'
import { type TemperatureUnit, temperatureText } from './temperature-words.ts'

/** The unit a person reads and types temperatures in; the frame sets it from the settings. */
export const TemperatureUnitContext = createContext<TemperatureUnit>('celsius')

/** The unit in which temperatures are shown and typed now. */
export function useTemperatureUnit(): TemperatureUnit {
  return useContext(TemperatureUnitContext)
}

/** How a temperature is written now, with its sign. */
export function useTemperatureText(): (celsius: number) => string {
  const unit = useTemperatureUnit()
  return (celsius) => temperatureText(celsius, unit)
}
