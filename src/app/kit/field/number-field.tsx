import { useId, useState } from 'react'
import { withOwnMark } from '@/core/units/number-text.ts'
import { type TypedNumber, typedNumber } from '@/core/units/typed-number.ts'
import { numberMissingText } from '@/core/wording/words/field-check-text.ts'
import { typedNumberText } from '@/core/wording/words/typed-number-text.ts'
import control from './control.module.css'
import { describedBy, Field, type FieldWords } from './field.tsx'
import styles from './number-field.module.css'

interface NumberFieldProps extends FieldWords {
  unit?: string
  value: number | null
  /** Called at each keystroke that gives a number (null when emptied), never with one that `check` refuses. */
  onValue: (value: number | null) => void
  /** The message that names the mend when a number cannot stand, else nothing. */
  check?: (value: number) => string | undefined
  required?: boolean
  /** What was typed, finished or not, where the place keeps it as a draft. */
  text?: string | undefined
  onText?: (text: string) => void
  digits?: number
  size?: 'plain' | 'bench'
  autoFocus?: boolean
  /** The place has keys of its own under the field: the device's keyboard stays away. */
  ownKeys?: boolean
  disabled?: boolean
}

function written(value: number | null, digits: number | undefined): string {
  if (value === null) return ''
  return withOwnMark(String(digits === undefined ? value : Number(value.toFixed(digits))))
}

/** What keeps this text from being a value, in words, or nothing. */
function complaintOf(
  text: string,
  { check, required, label, unit }: Pick<NumberFieldProps, 'check' | 'required' | 'label' | 'unit'>,
): string | undefined {
  const read = typedNumber(text, unit)
  if (!read.ok) return pastEnd(read, check) ?? typedNumberText(text, read)
  if (read.value === null) return required ? numberMissingText(label) : undefined
  return check?.(read.value)
}

/** A number past every field's ends gets the message of this field, which says where its own are. */
function pastEnd(
  trouble: Extract<TypedNumber, { ok: false }>,
  check: NumberFieldProps['check'],
): string | undefined {
  if (trouble.reason === 'too-large') return check?.(trouble.most)
  return trouble.reason === 'too-small' ? check?.(trouble.least) : undefined
}

/**
 * A number with its unit beside it. What was typed stays as it was typed; a value that cannot stand is never passed on,
 * and the message at the field says how to mend it once the field is left.
 */
export function NumberField(props: NumberFieldProps) {
  const { unit, value, onValue, text, onText, digits, size, disabled } = props
  const id = useId()
  const [typed, setTyped] = useState<string | null>(text ?? null)
  const [focused, setFocused] = useState(false)
  const [left, setLeft] = useState(text !== undefined)

  const kept = text ?? typed
  const read = kept === null ? null : typedNumber(kept, unit)
  const refused = kept === null ? undefined : complaintOf(kept, props)
  const keepsTyped = kept !== null && (focused || refused || (read?.ok && read.value === value))
  const shown = keepsTyped ? kept : written(value, digits)
  const complaint = left ? complaintOf(shown, props) : undefined
  const words = { ...props, problem: complaint ?? props.problem }

  const take = (next: string) => {
    setTyped(next)
    onText?.(next)
    const nextRead = typedNumber(next, unit)
    if (nextRead.ok && complaintOf(next, { ...props, required: false }) === undefined)
      onValue(nextRead.value)
  }

  return (
    <Field id={id} {...words}>
      <span className={styles.pair}>
        <input
          id={id}
          className={`${control.control} ${size === 'bench' ? control.bench : ''} ${styles.figure}`}
          type="text"
          inputMode={props.ownKeys ? 'none' : 'decimal'}
          autoComplete="off"
          spellCheck={false}
          value={shown}
          // biome-ignore lint/a11y/noAutofocus: only where a press opened exactly this one entry
          autoFocus={props.autoFocus}
          disabled={disabled}
          aria-invalid={words.problem ? true : undefined}
          aria-required={props.required ? true : undefined}
          aria-describedby={
            [unit ? `${id}-unit` : '', describedBy(id, words) ?? ''].filter(Boolean).join(' ') ||
            undefined
          }
          onFocus={() => {
            setTyped(shown)
            setFocused(true)
          }}
          onChange={(change) => take(change.target.value)}
          onBlur={() => {
            setFocused(false)
            setLeft(true)
          }}
        />
        {unit ? (
          <span id={`${id}-unit`} className={styles.unit}>
            {unit}
          </span>
        ) : null}
      </span>
    </Field>
  )
}
