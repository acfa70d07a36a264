import { useId } from 'react'
import control from './control.module.css'
import { describedBy, Field, type FieldWords } from './field.tsx'

interface SelectFieldProps<T extends string> extends FieldWords {
  value: T
  options: readonly { value: T; label: string; disabled?: boolean }[]
  onValue: (value: T) => void
  disabled?: boolean
}

/** One of a longer list. */
export function SelectField<T extends string>(props: SelectFieldProps<T>) {
  const id = useId()
  const { options, value, onValue, disabled } = props
  return (
    <Field id={id} {...props}>
      <select
        id={id}
        className={control.control}
        value={value}
        disabled={disabled}
        aria-invalid={props.problem ? true : undefined}
        aria-describedby={describedBy(id, props)}
        onChange={(change) => {
          const picked = options.find((option) => option.value === change.target.value)
          if (picked) onValue(picked.value)
        }}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value} disabled={option.disabled}>
            {option.label}
          </option>
        ))}
      </select>
    </Field>
  )
}
