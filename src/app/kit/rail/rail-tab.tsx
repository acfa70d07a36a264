import type { LevelLook } from '@/app/kit/look/level-look.ts'
import styles from './level-rail.module.css'
import tabs from './level-tab.module.css'
import type { PlacedTab } from './rail-layout.ts'

interface RailTabProps {
  tab: PlacedTab
  look: LevelLook | undefined
  /** What is said after its words, such as the unit. */
  unitOfMeasure: string
  current: boolean
  reachable: boolean
  onPick: ((levelId: string) => void) | undefined
}

/** One tab on the rail, with the stem that ties it to its true place when it stands in a higher row. */
export function RailTab({ tab, look, unitOfMeasure, current, reachable, onPick }: RailTabProps) {
  const face = [
    styles.face,
    tabs.tab,
    look?.pattern ? tabs[look.pattern] : tabs.strokes,
    current ? styles.current : '',
  ].join(' ')
  const spoken = [
    [tab.letter, tab.words, unitOfMeasure].filter(Boolean).join(' '),
    tab.control ? 'control' : undefined,
  ].filter(Boolean)
  const inside = (
    <span className={tabs.words}>
      {tab.letter ? <b>{tab.letter}</b> : null} <span>{tab.words}</span>
    </span>
  )
  return (
    <li>
      <span
        className={styles.stem}
        style={{ insetInlineStart: `${tab.at * 100}%`, blockSize: tab.liftPixels }}
      />
      <span
        className={`${styles.place} ${current ? styles.front : ''}`}
        style={{
          ...look?.style,
          insetInlineStart: tab.leftPixels,
          insetBlockEnd: tab.liftPixels,
          inlineSize: tab.widthPixels,
        }}
      >
        {onPick ? (
          <button
            type="button"
            className={face}
            tabIndex={reachable ? 0 : -1}
            aria-current={current ? 'true' : undefined}
            aria-label={spoken.join(', ')}
            title={tab.words}
            onClick={() => onPick(tab.levelId)}
          >
            {inside}
          </button>
        ) : (
          <span className={face}>{inside}</span>
        )}
      </span>
    </li>
  )
}
