import type { ReactNode } from 'react'
import styles from './button.module.css'
import { useOnePress } from './use-one-press.ts'

export type ButtonKind = 'primary' | 'plain' | 'quiet'
export type ButtonSize = 'plain' | 'small' | 'bench'

/** The class names of a button's look, for links that look like one. */
export function buttonLook(kind: ButtonKind = 'plain', size: ButtonSize = 'plain'): string {
  return [styles.button, styles[kind], size === 'plain' ? '' : styles[size]]
    .filter(Boolean)
    .join(' ')
}

interface ButtonProps {
  children: ReactNode
  onPress?: () => unknown
  kind?: ButtonKind
  size?: ButtonSize
  disabled?: boolean
  /** For a button that stays down. */
  pressed?: boolean
  /** Busy with work that something else set off, such as the form it submits. */
  busy?: boolean
  /** What a press would log, for one whose words alone do not tell: when it changes, the place takes no press for a moment. */
  means?: string
  expanded?: boolean
  label?: string
  describedBy?: string
  type?: 'button' | 'submit'
  id?: string
}

/**
 * A press. While a promise it returned is open the button is busy and takes no second press; a promise that fails is
 * told (`useWatched`), so that no failure stays unseen.
 */
export function Button(props: ButtonProps) {
  const { onPress, kind, size, disabled } = props
  const { busy, run } = useOnePress()
  return (
    <button
      type={props.type ?? 'button'}
      id={props.id}
      className={buttonLook(kind, size)}
      disabled={disabled}
      aria-busy={busy || props.busy ? true : undefined}
      data-means={props.means}
      aria-pressed={props.pressed}
      aria-expanded={props.expanded}
      aria-label={props.label}
      aria-describedby={props.describedBy}
      onClick={() => run(() => onPress?.())}
    >
      {props.children}
    </button>
  )
}
