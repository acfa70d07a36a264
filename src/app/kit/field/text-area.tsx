import { useId } from 'react'
import control from './control.module.css'
import { describedBy, Field, type FieldWords } from './field.tsx'

interface TextAreaProps extends FieldWords {
  value: string
  onValue: (value: string) => void
  rows?: number
  maxLength?: number
  disabled?: boolean
}

/** Several lines of text. */
export function TextArea(props: TextAreaProps) {
  const id = useId()
  return (
    <Field id={id} {...props}>
      <textarea
        id={id}
        className={control.control}
        rows={props.rows ?? 3}
        value={props.value}
        maxLength={props.maxLength}
        disabled={props.disabled}
        aria-invalid={props.problem ? true : undefined}
        aria-describedby={describedBy(id, props)}
        onChange={(change) => props.onValue(change.target.value)}
      />
    </Field>
  )
}
