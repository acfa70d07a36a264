import { type ReactNode, useState } from 'react'
import { useThrown } from '@/app/kit/page/use-thrown.ts'
import styles from './button.module.css'

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
  expanded?: boolean
  label?: string
  describedBy?: string
  type?: 'button' | 'submit'
  id?: string
}

/**
 * A press. While a promise it returned is open the button is busy and takes no second press; a promise that fails is
 * thrown to the nearest error boundary, so that no failure stays unseen.
 */
export function Button(props: ButtonProps) {
  const { onPress, kind, size, disabled } = props
  const [busy, setBusy] = useState(false)
  const watch = useThrown()

  const press = () => {
    if (busy) return
    const outcome = onPress?.()
    if (!(outcome instanceof Promise)) return
    setBusy(true)
    watch(outcome.finally(() => setBusy(false)))
  }

  return (
    <button
      type={props.type ?? 'button'}
      id={props.id}
      className={buttonLook(kind, size)}
      disabled={disabled}
      aria-busy={busy ? true : undefined}
      aria-pressed={props.pressed}
      aria-expanded={props.expanded}
      aria-label={props.label}
      aria-describedby={props.describedBy}
      onClick={press}
    >
      {props.children}
    </button>
  )
}
