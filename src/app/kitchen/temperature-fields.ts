import {
  degreeSign,
  shownDegrees,
  shownSteps,
  type TemperatureUnit,
  typedCelsius,
  typedSteps,
} from '@/app/kit/field/temperature-words.ts'
import type { KitchenField } from './kitchen-fields.ts'

/** A field as it is asked in the person's unit: the sign and the bounds of a temperature, all else as it stands. */
export function fieldIn(field: KitchenField, unit: TemperatureUnit): KitchenField {
  if (!field.measures) return field
  const bound = (key: 'least' | 'most') => {
    const celsius = field[key]
    return celsius === undefined ? {} : { [key]: shownOf(field, celsius, unit) }
  }
  return { ...field, ...bound('least'), ...bound('most'), unit: degreeSign(unit) }
}

/** A kept number as it is shown in the person's unit. */
export function shownOf({ measures }: KitchenField, kept: number, unit: TemperatureUnit): number {
  if (!measures) return kept
  return measures === 'temperature' ? shownDegrees(kept, unit) : shownSteps(kept, unit)
}

/** A typed number as it is kept: temperatures in °C. */
export function keptOf({ measures }: KitchenField, typed: number, unit: TemperatureUnit): number {
  if (!measures) return typed
  return measures === 'temperature' ? typedCelsius(typed, unit) : typedSteps(typed, unit)
}
