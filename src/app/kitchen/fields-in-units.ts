import {
  degreeSign,
  shownDegrees,
  shownSteps,
  typedCelsius,
  typedSteps,
} from '@/app/kit/field/temperature-words.ts'
import { type Manner, manner, writtenAs } from '@/core/units/manner.ts'
import { massUnit, shownMass, typedGrams } from '@/core/units/mass-text.ts'
import type { KitchenField } from './kitchen-fields.ts'

/** What an entry is typed in, from the moment it was opened. */
export type EntryUnits = Pick<Manner, 'temperature' | 'mass'>

/** The same as it is kept with what is typed. */
export const formUnits = ({ temperature, mass }: EntryUnits): Record<string, string> => ({
  ...{ formUnit: temperature, formMass: mass },
})

/** What a form was opened in; one that was left open by an older version says no mass. */
export function unitsOfForm({ formUnit, formMass }: Partial<Record<string, string>>): EntryUnits {
  return {
    temperature: formUnit === 'fahrenheit' ? 'fahrenheit' : 'celsius',
    mass: formMass === 'ounce' ? 'ounce' : 'gram',
  }
}

const inUnits = <Made>(units: EntryUnits, make: () => Made): Made =>
  writtenAs({ ...manner(), ...units }, make)

/** A field as it is asked in the person's units: sign and bounds of a temperature or a weight, all else as it stands. */
export function fieldIn(field: KitchenField, units: EntryUnits): KitchenField {
  const { measures } = field
  if (!measures) return field
  const bound = (key: 'least' | 'most') => {
    const kept = field[key]
    return kept === undefined ? {} : { [key]: shownOf(field, kept, units) }
  }
  const unit = measures === 'mass' ? inUnits(units, massUnit) : degreeSign(units.temperature)
  return { ...field, ...bound('least'), ...bound('most'), unit }
}

/** A kept number as it is shown in the person's units. */
export function shownOf({ measures }: KitchenField, kept: number, units: EntryUnits): number {
  if (!measures) return kept
  if (measures === 'mass') return inUnits(units, () => shownMass(kept))
  return measures === 'temperature'
    ? shownDegrees(kept, units.temperature)
    : shownSteps(kept, units.temperature)
}

/** A typed number as it is kept: temperatures in °C, weights in grams. */
export function keptOf({ measures }: KitchenField, typed: number, units: EntryUnits): number {
  if (!measures) return typed
  if (measures === 'mass') return inUnits(units, () => typedGrams(typed))
  return measures === 'temperature'
    ? typedCelsius(typed, units.temperature)
    : typedSteps(typed, units.temperature)
}
