import type { ReactNode } from 'react'
import unseen from '@/app/kit/look/unseen.module.css'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import styles from './field.module.css'

/** What every field may say around its control. */
export interface FieldWords {
  label: string
  hint?: ReactNode
  /** What is wrong with what was typed, and the mend; stands at the field. */
  problem?: string | undefined
  hideLabel?: boolean
}

interface FieldProps extends FieldWords {
  id: string
  children: ReactNode
}

/** The ids a control's aria-describedby names: its hint and, when there is one, its message. */
export function describedBy(id: string, { hint, problem }: FieldWords): string | undefined {
  const ids = [hint ? `${id}-hint` : '', problem ? `${id}-problem` : ''].filter(Boolean)
  return ids.length > 0 ? ids.join(' ') : undefined
}

/** Label above, control, hint and message below: the frame around every field of the kit. */
export function Field({ id, label, hint, problem, hideLabel, children }: FieldProps) {
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={hideLabel ? unseen.unseen : styles.label}>
        {label}
      </label>
      {children}
      <FieldNotes id={id} hint={hint} problem={problem} />
    </div>
  )
}

/** Hint and message of a field, under the ids that `describedBy` names. */
export function FieldNotes({ id, hint, problem }: Pick<FieldProps, 'id' | 'hint' | 'problem'>) {
  return (
    <>
      {hint ? (
        <span id={`${id}-hint`} className={styles.hint}>
          {hint}
        </span>
      ) : null}
      {problem ? (
        <span id={`${id}-problem`} className={styles.problem} role="alert">
          <WarningMark /> {problem}
        </span>
      ) : null}
    </>
  )
}
