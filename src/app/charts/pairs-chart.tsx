import { useRef, useState } from 'react'
import {
  CartesianGrid,
  ReferenceArea,
  ReferenceLine,
  ResponsiveContainer,
  Scatter,
  ScatterChart,
  usePlotArea,
  useXAxisScale,
  useYAxisScale,
  XAxis,
  YAxis,
} from 'recharts'
import type { PairPicture, PairRow } from '@/core/figure/pair-picture.ts'
import { differenceText, intervalText } from '@/core/wording/findings/difference-text.ts'
import styles from './charts.module.css'
import { useQuietLayers } from './use-quiet-layers.ts'

interface PairsChartProps {
  picture: PairPicture
  label: string
  /** The level lit on the rail, whose pairs are raised; null for none. */
  lit: string | null
}

const rowPixels = 30

/** Pairs as a picture of intervals against the margin: the wash is the margin, a filled dot leaves zero out. */
export function PairsChart({ picture, label, lit }: PairsChartProps) {
  const { axis, rows, margin } = picture
  const [reached, setReached] = useState<PairRow | null>(null)
  const section = useRef<HTMLDivElement>(null)
  useQuietLayers(section)
  const words = new Map(axis.ticks.map((tick) => [tick.value, tick.label]))
  const heightPixels = rows.length * rowPixels + 40
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls, and a page of charts is no page of landmarks
    <div ref={section} role="group" className={styles.plot} aria-label={label}>
      <ResponsiveContainer
        width="100%"
        height={heightPixels}
        initialDimension={{ width: 360, height: heightPixels }}
      >
        <ScatterChart margin={{ top: 4, right: 14, bottom: 0, left: 0 }} accessibilityLayer={false}>
          <CartesianGrid horizontal={false} vertical={false} />
          <XAxis
            dataKey="difference"
            type="number"
            domain={[axis.low, axis.high]}
            ticks={axis.ticks.map((tick) => tick.value)}
            tickFormatter={(value: number) => words.get(value) ?? ''}
            interval={0}
            axisLine={{ stroke: 'var(--edge)' }}
            tickLine={{ stroke: 'var(--edge)' }}
            tick={{ fill: 'var(--soft)' }}
            height={30}
          />
          <YAxis
            dataKey="row"
            type="number"
            domain={[-0.5, rows.length - 0.5]}
            allowDataOverflow
            tick={{ fill: 'var(--ink)' }}
            ticks={rows.map((_, index) => index)}
            tickFormatter={(index: number) => nameOf(rows[index])}
            interval={0}
            axisLine={false}
            tickLine={false}
            width={118}
          />
          {margin === null ? null : (
            <ReferenceArea
              x1={-margin}
              x2={margin}
              fill="var(--ink)"
              fillOpacity={0.07}
              ifOverflow="hidden"
            />
          )}
          <ReferenceLine x={0} stroke="var(--ink)" />
          <Scatter
            data={rows.map(({ difference }, row) => ({ difference, row }))}
            shape={() => <g />}
            isAnimationActive={false}
          />
          <PairsLayer rows={rows} lit={lit} onReach={setReached} />
        </ScatterChart>
      </ResponsiveContainer>
      <p className={styles.readout} aria-hidden="true">
        {reached ? sayPair(reached) : margin === null ? '' : 'The wash is your margin.'}
      </p>
    </div>
  )
}

function nameOf(row: PairRow | undefined): string {
  return row ? `${row.a} → ${row.b}` : ''
}

function sayPair(row: PairRow): string {
  return `${row.a} to ${row.b}: ${differenceText(row.difference)}, between ${intervalText(row.low, row.high)}`
}

interface PairsLayerProps {
  rows: readonly PairRow[]
  lit: string | null
  onReach: (row: PairRow | null) => void
}

function PairsLayer({ rows, lit, onReach }: PairsLayerProps) {
  const xScale = useXAxisScale()
  const yScale = useYAxisScale()
  const area = usePlotArea()
  if (!xScale || !yScale || !area) return null
  return rows.map((row, index) => {
    const y = Number(yScale(index))
    const [low, high, middle] = [row.low, row.high, row.difference].map((value) =>
      Number(xScale(value)),
    )
    return (
      // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a mark of a picture that is read by keyboard, and does nothing
      <g
        key={nameOf(row)}
        className={styles.mark}
        role="img"
        aria-label={sayPair(row)}
        tabIndex={0}
        onFocus={() => onReach(row)}
        onBlur={() => onReach(null)}
        onPointerEnter={() => onReach(row)}
        onPointerLeave={() => onReach(null)}
      >
        {lit !== null && row.levelIds?.includes(lit) ? (
          <rect
            className={styles.litPair}
            x={area.x + 1}
            y={y - rowPixels / 2 + 2}
            width={area.width - 2}
            height={rowPixels - 4}
          />
        ) : null}
        <rect
          className={styles.reach}
          x={(low ?? 0) - 6}
          y={y - rowPixels / 2 + 2}
          width={(high ?? 0) - (low ?? 0) + 12}
          height={rowPixels - 4}
          rx={3}
        />
        <line className={styles.interval} x1={low} x2={high} y1={y} y2={y} />
        <circle
          className={row.shows === 'open' ? styles.hollow : styles.filled}
          cx={middle}
          cy={y}
          r={5}
        />
      </g>
    )
  })
}
