import { memo, type ReactNode, useRef } from 'react'
import { levelLooks } from '@/app/kit/look/level-look.ts'
import { useSlowToShrink } from '@/app/kit/look/use-slow-to-shrink.ts'
import { useWidth } from '@/app/kit/look/use-width.ts'
import { rovingKeys } from '@/app/kit/press/roving-keys.ts'
import type { Level } from '@/core/trial/level.ts'
import { Beam } from './beam.tsx'
import styles from './level-rail.module.css'
import { type RailLayout, type RailSize, railLayout } from './rail-layout.ts'
import { RailTab } from './rail-tab.tsx'

interface LevelRailProps {
  levels: readonly Level[]
  factorName: string
  unitOfMeasure: string
  /** Each level's letter, only where one session is shown: letters are dealt anew each session. */
  letters?: ReadonlyMap<string, string> | undefined
  currentLevelId?: string | null | undefined
  /** Makes the tabs buttons and the rail a navigation; arrow keys walk along it. */
  onPick?: ((levelId: string) => void) | undefined
  /** `picture`: without strokes and words, for lists. */
  size?: RailSize
  /** What a page lays on the rail beside its tabs, by the layout that is in force. */
  over?: ((layout: RailLayout, railPixels: number) => ReactNode) | undefined
}

const settleMilliseconds = 1000
const firstGuessPixels = { plain: 640, picture: 220 }

/**
 * The axis of the factor, to scale, with a tab at each level: navigation, legend and picture of the trial. It fills its
 * container from edge to edge, so that a chart below it shares its places.
 */
export const LevelRail = memo(function LevelRail(props: LevelRailProps) {
  const { levels, factorName, unitOfMeasure, letters, currentLevelId, onPick, over } = props
  const size = props.size ?? 'plain'
  const strut = useRef<HTMLDivElement>(null)
  const railPixels = useWidth(strut, firstGuessPixels[size])
  const looks = levelLooks(levels)
  const settled = railLayout(levels, letters, size, railPixels)
  const gapPixels = useSlowToShrink(settled.gapPixels, railPixels, settleMilliseconds)
  const layout = { ...settled, gapPixels }
  const { axis, tabs } = layout
  const axisWords = [factorName, unitOfMeasure].filter(Boolean).join(', ')
  const current = tabs.find((tab) => tab.levelId === currentLevelId)
  const reachable = current ?? tabs[0]

  const list = (
    <ol className={styles.tabs}>
      {tabs.map((tab) => (
        <RailTab
          key={tab.levelId}
          tab={tab}
          look={looks.get(tab.levelId)}
          unitOfMeasure={axis.ordered ? unitOfMeasure : ''}
          marksUsual={layout.twoSided}
          current={tab === current}
          reachable={tab === reachable}
          onPick={onPick}
        />
      ))}
    </ol>
  )

  return (
    <div
      className={[styles.rail, styles[size], layout.twoSided ? styles.twoSided : ''].join(' ')}
      style={{
        ['--tab' as string]: `${layout.tabPixels}px`,
        ['--gap' as string]: `${layout.gapPixels}px`,
      }}
    >
      <div ref={strut} />
      {layout.twoSided ? <RailWords layout={layout} axisWords={axisWords} /> : null}
      <div className={styles.stage}>
        <Beam layout={layout} railPixels={railPixels} strokes={size === 'plain'} />
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
        {over?.(layout, railPixels)}
      </div>
      {layout.twoSided ? null : (
        <RailFoot layout={layout} railPixels={railPixels} size={size} axisWords={axisWords} />
      )}
      {tabs.map((tab) =>
        tab.numbered !== null && (tab === current || !onPick) ? (
          <p key={tab.levelId} className={styles.numbered}>
            {tab.numbered}
          </p>
        ) : null,
      )}
    </div>
  )
})

interface RailWordsProps {
  layout: RailLayout
  axisWords: string
}

/** Over a rail of two sides: what its triangle means, and the unit. */
function RailWords({ layout, axisWords }: RailWordsProps) {
  return (
    <div className={styles.words} aria-hidden="true">
      <span>
        {layout.tabs.some((tab) => tab.control) ? (
          <>
            <i className={styles.mark} /> usual
          </>
        ) : null}
      </span>
      <span className={styles.unit}>{axisWords}</span>
    </div>
  )
}

interface RailFootProps extends RailWordsProps {
  railPixels: number
  size: RailSize
}

const usualWordsPixels = 52
const markHalfPixels = 5
const unitGlyphPixels = 5.9

/** Under the beam: the triangle at the usual level, its word, and the unit at the end that is free; where neither end has room for all of it, as much as the wider one holds. */
function RailFoot({ layout, railPixels, size, axisWords }: RailFootProps) {
  const usual = layout.tabs.find((tab) => tab.control)
  const place = usual?.placePixels ?? 0
  const unitPixels = axisWords.length * unitGlyphPixels + 6
  const wordBefore = place + usualWordsPixels > railPixels
  const roomBefore = place - (wordBefore ? usualWordsPixels : markHalfPixels)
  const roomAfter = usual ? railPixels - place - usualWordsPixels : railPixels
  const atStart = usual !== undefined && roomAfter < unitPixels && roomBefore > roomAfter
  return (
    <div className={styles.foot} aria-hidden="true">
      {usual ? (
        <span
          className={`${styles.usual} ${wordBefore ? styles.before : ''}`}
          style={{ insetInlineStart: place }}
        >
          <i className={styles.mark} />
          {size === 'plain' ? <span>usual</span> : null}
        </span>
      ) : null}
      <span
        className={`${styles.unit} ${atStart ? styles.atStart : ''}`}
        style={{ maxInlineSize: Math.max(atStart ? roomBefore : roomAfter, 0) }}
      >
        {axisWords}
      </span>
    </div>
  )
}
