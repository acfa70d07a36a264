import type { ReactNode } from 'react'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { typedNumber } from '@/core/units/typed-number.ts'
import { PlanField, type PlanFieldPlace, useTroubleAt } from './plan-field.tsx'

interface PlanNumberProps extends PlanFieldPlace {
  label: string
  unit?: string
  value: number | null
  check?: (value: number) => string | undefined
  hint?: ReactNode
  hideLabel?: boolean
  digits?: number
  disabled?: boolean
}

interface NeededNumberProps extends PlanNumberProps {
  onValue: (value: number) => void
  may?: undefined
}

interface OptionalNumberProps extends PlanNumberProps {
  onValue: (value: number | null) => void
  /** The field may be left empty. */
  may: 'be-empty'
}

/**
 * A number of the plan. What can stand goes into the plan; what cannot (text, out of range, emptied where a
 * number is needed) stays in the field as a draft with its message, and the plan keeps the last good number. The key is drawn
 * first; the plan has it a frame later, or as soon as anything else is done.
 */
export function PlanNumber(props: NeededNumberProps | OptionalNumberProps) {
  const { field, path, label, unit, value, check, hint, hideLabel, digits, disabled } = props
  const text = usePlanPage((page) => page.drafts[field])
  const { afterKey, draft } = usePlanActions()
  const trouble = useTroubleAt(path)
  const required = props.may === undefined
  const stands = (typed: string) => {
    const read = typedNumber(typed, unit)
    if (!read.ok) return false
    return read.value === null ? !required : check?.(read.value) === undefined
  }
  return (
    <PlanField
      field={field}
      {...(path ? { path } : {})}
      label={label}
      unfinished={text !== undefined}
    >
      <NumberField
        label={label}
        value={value}
        required={required}
        text={text}
        onText={(typed) => draft(field, stands(typed) ? null : typed)}
        onValue={(next) =>
          afterKey(() => {
            if (next !== null) props.onValue(next)
            else if (props.may) props.onValue(null)
          })
        }
        problem={trouble}
        {...(unit === undefined ? {} : { unit })}
        {...(check ? { check } : {})}
        {...(hint === undefined ? {} : { hint })}
        {...(hideLabel === undefined ? {} : { hideLabel })}
        {...(digits === undefined ? {} : { digits })}
        {...(disabled === undefined ? {} : { disabled })}
      />
    </PlanField>
  )
}
