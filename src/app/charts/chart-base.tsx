import { type ReactNode, useRef } from 'react'
import { CartesianGrid, ComposedChart, ResponsiveContainer, XAxis, YAxis } from 'recharts'
import type { ValueAxis } from '@/core/figure/value-axis.ts'
import styles from './charts.module.css'
import { useQuietLayers } from './use-quiet-layers.ts'

const noLines = () => []

export const firstPlotPixels = 640

interface ChartBaseProps {
  y: ValueAxis
  heightPixels: number
  /** Room above the plot, for the best's bracket. */
  topPixels?: number
  /** Rows that hold `at` for the curve; layers bring their own. */
  rows?: readonly { at: number }[]
  label: string
  children: ReactNode
  fewTicks?: boolean
  /** 0 to 1: the place of the level that is lit on the rail, whose column is raised between two lines. */
  litAt?: number | undefined
  /** Told how wide the plot is, at first and whenever that changes. */
  onWidth?: (pixels: number) => void
}

/**
 * The plot that all charts over the factor share: from edge to edge of its container, so that places 0 to 1 are those of
 * the level rail above it; figures of the upright axis stand inside, on their rules.
 */
export function ChartBase(props: ChartBaseProps) {
  const {
    y,
    heightPixels,
    topPixels = 16,
    rows = [],
    label,
    children,
    fewTicks,
    litAt,
    onWidth,
  } = props
  const ends = [y.ticks[0], y.ticks.at(-1)]
  const ticks = (fewTicks ? ends : y.ticks).flatMap((tick) => (tick ? [tick] : []))
  const words = new Map(ticks.map((tick) => [tick.value, tick.label]))
  const section = useRef<HTMLDivElement>(null)
  useQuietLayers(section)
  const room = (y.high - y.low) * 0.04
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls, and a page of charts is no page of landmarks
    <div ref={section} role="group" className={styles.plot} aria-label={label}>
      {litAt === undefined ? null : (
        <div className={styles.litColumn} style={{ insetInlineStart: `${litAt * 100}%` }} />
      )}
      <ResponsiveContainer
        width="100%"
        height={heightPixels}
        initialDimension={{ width: firstPlotPixels, height: heightPixels }}
        {...(onWidth ? { onResize: onWidth } : {})}
      >
        <ComposedChart
          data={[...rows]}
          margin={{ top: topPixels, right: 0, bottom: 8, left: 0 }}
          accessibilityLayer={false}
        >
          <CartesianGrid
            vertical={false}
            // Else it measures words for lines that it does not draw.
            verticalCoordinatesGenerator={noLines}
            stroke="var(--rule)"
            syncWithTicks
          />
          <XAxis dataKey="at" type="number" domain={[0, 1]} ticks={[0, 1]} hide allowDataOverflow />
          <YAxis
            type="number"
            domain={[y.low - room, y.high + room]}
            ticks={ticks.map((tick) => tick.value)}
            tickFormatter={(value: number) => words.get(value) ?? ''}
            mirror
            interval={0}
            axisLine={false}
            tickLine={false}
            tick={{ dy: -8, dx: -6, fill: 'var(--soft)' }}
            width={1}
            allowDataOverflow
          />
          {children}
        </ComposedChart>
      </ResponsiveContainer>
    </div>
  )
}
