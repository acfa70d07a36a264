import { memo, useRef } from 'react'
import { levelLooks } from '@/app/kit/look/level-look.ts'
import { useWidth } from '@/app/kit/look/use-width.ts'
import { rovingKeys } from '@/app/kit/press/roving-keys.ts'
import type { Level } from '@/core/trial/level.ts'
import { levelShort } from '@/core/wording/words/level-text.ts'
import styles from './level-rail.module.css'
import { type RailSize, railLayout } from './rail-layout.ts'
import { RailTab } from './rail-tab.tsx'
import { useSlowToShrink } from './use-slow-to-shrink.ts'

interface LevelRailProps {
  levels: readonly Level[]
  factorName: string
  unitOfMeasure: string
  /** Each level's random letter, once a session is dealt. */
  letters?: ReadonlyMap<string, string> | undefined
  currentLevelId?: string | null | undefined
  /** Makes the tabs buttons and the rail a navigation; arrow keys walk along it. */
  onPick?: ((levelId: string) => void) | undefined
  /** `picture`: small and without words, for lists. */
  size?: RailSize
}

const firstGuessPixels = { plain: 640, picture: 220 }
const settleMilliseconds = 1000

/**
 * The axis of the factor, to scale, with a tab at each level: navigation, legend and picture of the trial. It fills its
 * container from edge to edge, so that a chart below it shares its places. Tabs that would overlap stand in rows.
 */
export const LevelRail = memo(function LevelRail(props: LevelRailProps) {
  const {
    levels,
    factorName,
    unitOfMeasure,
    letters,
    currentLevelId,
    onPick,
    size = 'plain',
  } = props
  const ref = useRef<HTMLDivElement>(null)
  const railPixels = useWidth(ref, firstGuessPixels[size])
  const looks = levelLooks(levels)
  const { axis, tabs, heightPixels } = railLayout(levels, letters, size, railPixels)
  const roomPixels = useSlowToShrink(heightPixels, railPixels, settleMilliseconds)
  const control = axis.positions.find((position) => position.control)
  const axisWords = [factorName, unitOfMeasure].filter(Boolean).join(', ')
  const current = tabs.find((tab) => tab.levelId === currentLevelId)
  const reachable = current ?? tabs[0]

  const list = (
    <ol className={styles.tabs} style={{ blockSize: roomPixels }}>
      {tabs.map((tab) => (
        <RailTab
          key={tab.levelId}
          tab={tab}
          look={looks.get(tab.levelId)}
          unitOfMeasure={axis.ordered ? unitOfMeasure : ''}
          current={tab === current}
          reachable={tab === reachable}
          onPick={onPick}
        />
      ))}
    </ol>
  )

  return (
    <div ref={ref} className={`${styles.rail} ${styles[size]}`}>
      {onPick ? (
        <nav
          aria-label={`Levels: ${axisWords}`}
          onKeyDown={rovingKeys((index) => {
            const reached = tabs[index]
            if (reached) onPick(reached.levelId)
          })}
        >
          {list}
        </nav>
      ) : (
        list
      )}
      <div className={styles.axis} aria-hidden="true">
        <svg
          className={styles.ticks}
          viewBox="0 0 1 1"
          preserveAspectRatio="none"
          aria-hidden="true"
        >
          <path d={axis.ticks.map(({ at }) => `M${at} 0V1`).join('')} />
        </svg>
        {control && size === 'plain' ? (
          <i className={styles.control} style={{ insetInlineStart: `${control.at * 100}%` }} />
        ) : null}
      </div>
      {size === 'plain' ? (
        <div className={styles.foot}>
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
    </div>
  )
})
