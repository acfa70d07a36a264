import { beamTicks } from '@/core/figure/beam-ticks.ts'
import styles from './level-rail.module.css'
import type { RailLayout } from './rail-layout.ts'

interface BeamProps {
  layout: RailLayout
  railPixels: number
  strokes: boolean
}

/** The beam with its strokes to scale, and the hairlines from tabs that had to move to their true places. */
export function Beam({ layout, railPixels, strokes }: BeamProps) {
  const { axis, tabs, gapPixels, tabPixels, twoSided } = layout
  const y = tabPixels + gapPixels
  const lines = tabs.map((tab) => {
    const middle = tab.leftPixels + tab.widthPixels / 2
    return tab.side === 'above'
      ? `M${middle} ${tabPixels}L${tab.placePixels} ${y}`
      : `M${middle} ${y + gapPixels + 2}L${tab.placePixels} ${y + 2}`
  })
  const ticks = beamTicks(axis).map(
    ({ at, long }) => `M${at * railPixels} ${y}v${twoSided ? 5 : long ? 9 : 6}`,
  )
  const heightPixels = twoSided ? 2 * (tabPixels + gapPixels) + 2 : y + 11
  return (
    <svg
      className={styles.beam}
      width={railPixels}
      height={heightPixels}
      viewBox={`0 0 ${railPixels} ${heightPixels}`}
      aria-hidden="true"
    >
      {gapPixels > 0 ? <path className={styles.hairline} d={lines.join('')} /> : null}
      {strokes ? <path className={styles.stroke} d={ticks.join('')} /> : null}
      <rect className={styles.bar} x="0" y={y} width={railPixels} height="2" />
    </svg>
  )
}
