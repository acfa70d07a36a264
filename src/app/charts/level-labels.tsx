import { apartTabs } from '@/core/figure/apart-tabs.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { levelStyle } from './level-fills.ts'
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
  /** The options of a choice have names, which share the room in lines; levels of a number move apart where they would touch. */
  named: boolean
  widthPixels: number
}

const labelPixels = 50

/** The rail's labels under a chart again: a stroke, the foot, the level, its mean. Told to nobody twice: the means above say them. */
export function LevelLabels(props: LevelLabelsProps) {
  const { levels, fills, meanWords, lit, named, widthPixels } = props
  const lefts = apartTabs(
    levels.map(({ at }) => ({ at, widthPixels: labelPixels })),
    widthPixels,
  )
  return (
    <div className={`${styles.labels} ${named ? styles.named : ''}`} aria-hidden="true">
      <span className={styles.words}>{meanWords}</span>
      {levels.map(({ levelId, label, at, estimate }, index) => (
        <span key={levelId}>
          <i className={styles.stroke} style={{ insetInlineStart: `${at * 100}%` }} />
          <span
            className={`${styles.label} ${levelId === lit ? styles.lit : ''}`}
            style={named ? undefined : { insetInlineStart: lefts[index], inlineSize: labelPixels }}
          >
            <i className={styles.foot} style={levelStyle(fills, levelId)} />
            <b>{label}</b>
            <span>{decimalText(estimate, 1)}</span>
          </span>
        </span>
      ))}
    </div>
  )
}
