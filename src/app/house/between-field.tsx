import { NumberField } from '@/app/kit/field/number-field.tsx'
import { betweenText } from '@/core/wording/words/field-check-text.ts'

export interface OneNumber {
  label: string
  value: number
  onValue: (value: number) => void
}

/** A number between two ends; what cannot stand is not passed on. */
export function Between({
  label,
  value,
  onValue,
  unit,
  ends: [least, end],
}: OneNumber & { unit: string; ends: readonly [number, number] }) {
  return (
    <NumberField
      label={label}
      unit={unit}
      value={value}
      digits={2}
      check={(number) =>
        number >= least && number <= end ? undefined : betweenText(least, end, unit)
      }
      onValue={(number) => (number === null ? undefined : onValue(number))}
    />
  )
}

/** A length inside a tin or pan, cm. */
export const Length = (props: OneNumber) => <Between {...props} unit="cm" ends={[0.5, 300]} />
