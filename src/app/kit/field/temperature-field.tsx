import type { ComponentProps } from 'react'
import { NumberField } from './number-field.tsx'
import { useTemperatureUnit } from './temperature-unit.ts'
import { temperatureEntry } from './temperature-words.ts'

interface TemperatureFieldProps
  extends Omit<ComponentProps<typeof NumberField>, 'unit' | 'check' | 'digits'> {
  /** The ends between which a temperature can stand, °C. */
  leastCelsius: number
  mostCelsius: number
}

/** A temperature: value and ends are °C, shown and typed in the unit that the person chose. */
export function TemperatureField(props: TemperatureFieldProps) {
  const { leastCelsius, mostCelsius, value, onValue, ...rest } = props
  const entry = temperatureEntry(useTemperatureUnit(), { leastCelsius, mostCelsius })
  return (
    <NumberField
      {...rest}
      unit={entry.unit}
      value={entry.shown(value)}
      check={entry.check}
      onValue={(typed) => onValue(typed === null ? null : entry.celsius(typed))}
    />
  )
}
