import { useId } from 'react'
import { describedBy, FieldNotes } from './field.tsx'
import styles from './switch.module.css'

interface SwitchProps {
  label: string
  on: boolean
  onSwitch: (on: boolean) => void
  hint?: string
  disabled?: boolean
}

/** Something that is so or not so, at once. */
export function Switch({ label, on, onSwitch, hint, disabled }: SwitchProps) {
  const id = useId()
  return (
    <div className={styles.switch}>
      <label className={styles.line}>
        <input
          type="checkbox"
          role="switch"
          checked={on}
          aria-checked={on}
          disabled={disabled}
          aria-describedby={describedBy(id, { label, hint })}
          onChange={(change) => onSwitch(change.target.checked)}
        />
        <span>{label}</span>
      </label>
      <FieldNotes id={id} hint={hint} problem={undefined} />
    </div>
  )
}
