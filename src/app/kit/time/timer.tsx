import { clockText } from './clock-text.ts'
import styles from './timer.module.css'
import { useTicking } from './use-ticking.ts'

interface TimerProps {
  /** What is running, for the ear: "Rest of batch B". */
  label: string
  /** UTC milliseconds. */
  startedAt: number
  /** Read every second, by this part of the screen alone. */
  clock: () => number
  /** With a goal the clock counts down to it, then says how much it is over. */
  goalSeconds?: number
  size?: 'plain' | 'bench'
}

/** A running clock from its start stamp: it keeps nothing, so a reload changes nothing. */
export function Timer({ label, startedAt, clock, goalSeconds, size = 'plain' }: TimerProps) {
  const now = useTicking(clock)
  const runSeconds = Math.max(0, (now - startedAt) / 1000)
  const leftSeconds = goalSeconds === undefined ? undefined : goalSeconds - runSeconds
  const over = leftSeconds !== undefined && leftSeconds < 0
  const shown = clockText(
    leftSeconds === undefined || over ? (over ? leftSeconds : runSeconds) : Math.ceil(leftSeconds),
  )
  return (
    <span
      className={`${styles.timer} ${styles[size]} ${shown.length > 5 || over ? styles.long : ''} ${over ? styles.over : ''}`}
    >
      <span role="timer" aria-label={`${label}: ${shown}${over ? ' over' : ''}`}>
        {over ? '+' : ''}
        {shown}
      </span>
      {over ? <span className={styles.word}>over</span> : null}
    </span>
  )
}
