import { type TemperatureUnit, temperatureText } from './temperature-words.ts'
import { useManner } from './use-manner.ts'

/** The unit in which temperatures are shown and typed now. */
export function useTemperatureUnit(): TemperatureUnit {
  return useManner().temperature
}

/** How a temperature is written now, with its sign. */
export function useTemperatureText(): (celsius: number) => string {
  const unit = useTemperatureUnit()
  return (celsius) => temperatureText(celsius, unit)
}
