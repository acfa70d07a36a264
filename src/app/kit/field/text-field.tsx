import { useId, useState } from 'react'
import control from './control.module.css'
import { describedBy, Field, type FieldWords } from './field.tsx'

interface TextFieldProps extends FieldWords {
  value: string
  onValue: (value: string) => void
  onLeave?: () => void
  /** The message that names the mend when a text cannot stand, else nothing; shown once the field is left. */
  check?: (value: string) => string | undefined
  maxLength?: number
  placeholder?: string
  inputMode?: 'text' | 'search' | 'numeric'
  type?: 'text' | 'search'
  autoFocus?: boolean
  disabled?: boolean
}

/** One line of text. */
export function TextField(props: TextFieldProps) {
  const id = useId()
  const [left, setLeft] = useState(false)
  const words = {
    ...props,
    problem: (left ? props.check?.(props.value) : undefined) ?? props.problem,
  }
  return (
    <Field id={id} {...words}>
      <input
        id={id}
        className={control.control}
        type={props.type ?? 'text'}
        inputMode={props.inputMode ?? 'text'}
        autoComplete="off"
        value={props.value}
        maxLength={props.maxLength}
        placeholder={props.placeholder}
        // biome-ignore lint/a11y/noAutofocus: only where a press opened exactly this one entry
        autoFocus={props.autoFocus}
        disabled={props.disabled}
        aria-invalid={words.problem ? true : undefined}
        aria-describedby={describedBy(id, words)}
        onChange={(change) => props.onValue(change.target.value)}
        onBlur={() => {
          setLeft(true)
          props.onLeave?.()
        }}
      />
    </Field>
  )
}
