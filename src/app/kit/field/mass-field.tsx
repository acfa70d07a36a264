import type { ComponentProps } from 'react'
import { massEntry } from './mass-entry.ts'
import { NumberField } from './number-field.tsx'

/** A weight: value, check and what it gives are grams, shown and typed in the unit that the person chose. */
export function MassField(props: Omit<ComponentProps<typeof NumberField>, 'unit'>) {
  const { value, check, onValue, ...rest } = props
  const entry = massEntry()
  return (
    <NumberField
      {...rest}
      unit={entry.unit}
      value={entry.shown(value)}
      {...(check ? { check: entry.check(check) } : {})}
      onValue={(typed) => onValue(typed === null ? null : entry.grams(typed))}
    />
  )
}
