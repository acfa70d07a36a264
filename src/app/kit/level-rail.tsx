import { type CSSProperties, useMemo, useRef } from 'react'
import { levelAxis } from '@/core/figure/level-axis.ts'
import type { Level } from '@/core/trial/level.ts'
import { levelShort } from '@/core/wording/level-text.ts'
import { levelLooks } from './level-look.ts'
import styles from './level-rail.module.css'
import tabs from './level-tab.module.css'
import { rovingKeys } from './roving-keys.ts'
import { stackedTabs } from './stacked-tabs.ts'
import { useWidth } from './use-width.ts'

interface LevelRailProps {
  levels: readonly Level[]
  factorName: string
  unitOfMeasure: string
  /** Each level's random letter, once a session is dealt. */
  letters?: ReadonlyMap<string, string> | undefined
  currentLevelId?: string | null | undefined
  /** Makes the tabs buttons; arrow keys walk along them. */
  onPick?: ((levelId: string) => void) | undefined
  /** `picture`: small and without words, for lists. */
  size?: 'plain' | 'picture'
}

const tabRows = { plain: 42, picture: 24 }
const glyphPixels = { plain: 9.4, picture: 7.6 }

function tabPixels(words: string, letter: string | undefined, size: 'plain' | 'picture'): number {
  const glyphs = words.length + (letter ? letter.length + 0.6 : 0)
  const natural = glyphs * glyphPixels[size] + (size === 'plain' ? 20 : 10)
  return Math.min(size === 'plain' ? 168 : 96, Math.max(size === 'plain' ? 44 : 22, natural))
}

/**
 * The axis of the factor, to scale, with a tab at each level: navigation, legend and picture of the trial. It fills its
 * container from edge to edge, so that a chart below it shares its places. Tabs that would overlap stand in rows.
 */
export function LevelRail(props: LevelRailProps) {
  const { levels, factorName, unitOfMeasure, letters, currentLevelId, onPick } = props
  const size = props.size ?? 'plain'
  const ref = useRef<HTMLElement>(null)
  const railPixels = useWidth(ref, size === 'plain' ? 640 : 220)
  const axis = useMemo(() => levelAxis(levels), [levels])
  const looks = useMemo(() => levelLooks(levels), [levels])
  const placed = axis.positions.map((position) => {
    const words = levelShort(position)
    const letter = letters?.get(position.levelId)
    return { ...position, words, letter, widthPixels: tabPixels(words, letter, size) }
  })
  const stacked = stackedTabs(placed, railPixels)
  const rows = Math.max(1, ...stacked.map((tab) => tab.row + 1))
  const control = axis.positions.find((position) => position.control)
  const axisWords = [factorName, unitOfMeasure].filter(Boolean).join(', ')
  const reachable = placed.some((tab) => tab.levelId === currentLevelId)
    ? currentLevelId
    : placed[0]?.levelId

  const list = (
    <ol
      className={styles.tabs}
      style={{ blockSize: rows * tabRows[size] + (size === 'plain' ? 6 : 0) }}
    >
      {placed.map((tab, index) => {
        const { leftPixels = 0, row = 0 } = stacked[index] ?? {}
        const look = looks.get(tab.levelId)
        const current = tab.levelId === currentLevelId
        const face = `${styles.face} ${tabs.tab} ${look?.pattern ? tabs[look.pattern] : ''} ${current ? styles.current : ''}`
        const spoken = [tab.letter, `${tab.words} ${axis.ordered ? unitOfMeasure : ''}`.trim()]
        if (tab.control) spoken.push('control')
        const inside = (
          <span className={tabs.words}>
            {tab.letter ? <b>{tab.letter}</b> : null}
            <span>{tab.words}</span>
          </span>
        )
        return (
          <li key={tab.levelId}>
            <span
              className={styles.stem}
              style={{ insetInlineStart: `${tab.at * 100}%`, blockSize: row * tabRows[size] }}
            />
            <span
              className={styles.place}
              style={
                {
                  ...look?.style,
                  insetInlineStart: leftPixels,
                  insetBlockEnd: row * tabRows[size],
                  inlineSize: tab.widthPixels,
                } as CSSProperties
              }
            >
              {onPick ? (
                <button
                  type="button"
                  className={face}
                  tabIndex={tab.levelId === reachable ? 0 : -1}
                  aria-current={current ? 'true' : undefined}
                  aria-label={spoken.filter(Boolean).join(', ')}
                  title={axis.ordered ? undefined : tab.words}
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
      })}
    </ol>
  )

  return (
    <nav
      ref={ref}
      className={`${styles.rail} ${styles[size]}`}
      aria-label={`Levels: ${axisWords}`}
      onKeyDown={
        onPick
          ? rovingKeys((index) => {
              const reached = placed[index]
              if (reached) onPick(reached.levelId)
            })
          : undefined
      }
    >
      {list}
      <div className={styles.axis} aria-hidden="true">
        {axis.ticks.map((tick) => (
          <i
            key={tick.value}
            className={styles.tick}
            style={{ insetInlineStart: `${tick.at * 100}%` }}
          />
        ))}
      </div>
      {size === 'plain' ? (
        <div className={styles.foot}>
          {control ? (
            <span
              className={styles.control}
              aria-hidden="true"
              style={{ insetInlineStart: `${control.at * 100}%` }}
            >
              <i />
            </span>
          ) : null}
          <span>
            {control ? (
              <>
                <i className={styles.mark} /> control {levelShort(control)}
              </>
            ) : (
              'no control'
            )}
          </span>
          <span>{axisWords}</span>
        </div>
      ) : null}
    </nav>
  )
}
