import type { KeyboardEvent } from 'react'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './inline-press.module.css'

interface InlinePressProps {
  children: string
  onPress: () => void
  expanded?: boolean
  label?: string
}

/** A value in a sentence that can be pressed. It breaks over lines as words do, which a button cannot. */
export function InlinePress({ children, onPress, expanded, label }: InlinePressProps) {
  const keyed = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return
    event.preventDefault()
    onPress()
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button element is one box and cannot break over lines
    <span
      role="button"
      tabIndex={0}
      className={styles.value}
      aria-expanded={expanded}
      aria-label={label}
      onClick={onPress}
      onKeyDown={keyed}
    >
      {boundUnits(children)}
    </span>
  )
}
