import { useId } from 'react'
import unseen from '@/app/kit/look/unseen.module.css'
import styles from './choice.module.css'
import field from './field.module.css'
import { describedBy, FieldNotes, type FieldWords } from './field.tsx'

interface ChoiceProps<T extends string> extends FieldWords {
  value: T | null
  options: readonly { value: T; label: string; hint?: string }[]
  onValue: (value: T) => void
  size?: 'plain' | 'bench'
  /** Side by side where there is room. */
  row?: boolean
  disabled?: boolean
}

/** One of a few, all in sight. */
export function Choice<T extends string>(props: ChoiceProps<T>) {
  const id = useId()
  const { label, hideLabel, value, options, onValue, size, row, disabled } = props
  return (
    <fieldset
      className={styles.group}
      disabled={disabled}
      aria-describedby={describedBy(id, props)}
    >
      <legend className={hideLabel ? unseen.unseen : field.label}>{label}</legend>
      <div
        className={`${row ? styles.row : styles.column} ${size === 'bench' ? styles.bench : ''}`}
      >
        {options.map((option) => (
          <label key={option.value} className={styles.option}>
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value}
              onChange={() => onValue(option.value)}
            />
            <span>
              {option.label}
              {option.hint ? <span className={styles.hint}>{option.hint}</span> : null}
            </span>
          </label>
        ))}
      </div>
      <FieldNotes id={id} hint={props.hint} problem={props.problem} />
    </fieldset>
  )
}
