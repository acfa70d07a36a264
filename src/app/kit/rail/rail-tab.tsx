import type { LevelLook } from '@/app/kit/look/level-look.ts'
import styles from './level-rail.module.css'
import tabs from './level-tab.module.css'
import type { PlacedTab } from './rail-layout.ts'

interface RailTabProps {
  tab: PlacedTab
  look: LevelLook | undefined
  /** What is said after its words, such as the unit. */
  unitOfMeasure: string
  /** The usual has its triangle in the tab. */
  marksUsual: boolean
  current: boolean
  reachable: boolean
  onPick: ((levelId: string) => void) | undefined
}

/** One tab on the rail; pressed, where there is something to press, over the whole height of the rail. */
export function RailTab(props: RailTabProps) {
  const { tab, look, unitOfMeasure, marksUsual, current, reachable, onPick } = props
  const spoken = [
    [tab.letter, tab.words, unitOfMeasure].filter(Boolean).join(' '),
    tab.control ? 'usual' : undefined,
  ].filter(Boolean)
  const face = (
    <span
      className={[
        styles.face,
        tabs.tab,
        look?.pattern ? tabs[look.pattern] : tabs.strokes,
        current ? styles.current : '',
      ].join(' ')}
    >
      <span className={tabs.words}>
        {marksUsual && tab.control ? <i className={styles.mark} /> : null}
        {tab.letter ? <b>{tab.letter}</b> : null}{' '}
        <span className={styles.lines}>{tab.lines.join('\n')}</span>
      </span>
    </span>
  )
  const place = {
    className: `${styles.place} ${tab.side === 'below' ? styles.below : ''} ${current ? styles.front : ''}`,
    style: { ...look?.style, insetInlineStart: tab.leftPixels, inlineSize: tab.widthPixels },
  }
  return (
    <li>
      {onPick ? (
        <button
          type="button"
          {...place}
          tabIndex={reachable ? 0 : -1}
          aria-current={current ? 'true' : undefined}
          aria-label={spoken.join(', ')}
          title={tab.words}
          onClick={() => onPick(tab.levelId)}
        >
          {face}
        </button>
      ) : (
        <span {...place}>{face}</span>
      )}
    </li>
  )
}
