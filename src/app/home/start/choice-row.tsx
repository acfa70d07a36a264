import { ForwardMark } from '@/app/kit/look/forward-mark.tsx'
import styles from './start-place.module.css'

interface ChoiceRowProps {
  name: string
  hint: string
  /** Whether it stays down; not said where a press goes on at once. */
  pressed?: boolean
  onPress: () => void
}

/** One answer of a question of the start, one press. */
export function ChoiceRow({ name, hint, pressed, onPress }: ChoiceRowProps) {
  return (
    <button type="button" className={styles.choice} aria-pressed={pressed} onClick={onPress}>
      <span>
        <b>{name}</b> <span className={styles.soft}>{hint}</span>
      </span>
      <ForwardMark />
    </button>
  )
}
