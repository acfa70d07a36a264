import { decimalText } from '@/core/units/number-text.ts'
import styles from './level-labels.module.css'

interface LabelledLevel {
  levelId: string
  label: string
  at: number
  estimate: number
}

interface LevelLabelsProps {
  levels: readonly LabelledLevel[]
  fills: ReadonlyMap<string, string>
  /** What the lower figure is, at the left end: "mean of 24". */
  meanWords: string
  /** The level lit on the rail. */
  lit: string | null
}

/** The rail's labels under a chart again: a stroke, the foot, the level, its mean. Told to nobody twice: the means above say them. */
export function LevelLabels({ levels, fills, meanWords, lit }: LevelLabelsProps) {
  return (
    <div className={styles.labels} aria-hidden="true">
      <span className={styles.words}>{meanWords}</span>
      {levels.map(({ levelId, label, at, estimate }) => (
        <span
          key={levelId}
          className={`${styles.label} ${levelId === lit ? styles.lit : ''}`}
          style={{ insetInlineStart: `${at * 100}%` }}
        >
          <i className={styles.foot} style={{ background: fills.get(levelId) }} />
          <b>{label}</b>
          <span>{decimalText(estimate, 1)}</span>
        </span>
      ))}
    </div>
  )
}
