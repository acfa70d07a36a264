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
import { type PairPlaces, pairName, pairPlaces } from '@/core/figure/pair-places.ts'
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
const linePixels = 17
const glyphPixels = 7
const leastNamesPixels = 118
const gapPixels = 8
const axisPixels = 34
const firstPixels = 360
/** Half of a figure under the left end of the axis. */
const tickPixels = 14

/** Pairs as a picture of intervals against the margin: the wash is the margin, a filled dot leaves zero out. */
export function PairsChart({ picture, label, lit }: PairsChartProps) {
  const { axis, rows, margin } = picture
  const [reached, setReached] = useState<PairRow | null>(null)
  const section = useRef<HTMLDivElement>(null)
  useQuietLayers(section)
  const [widthPixels, setWidthPixels] = useState(firstPixels)
  const words = new Map(axis.ticks.map((tick) => [tick.value, tick.label]))
  // The largest difference stands on top.
  const shown = rows.toReversed()
  const placed = pairPlaces(shown, {
    ...{ widthPixels, glyphPixels, linePixels, rowPixels },
    widestNamesPixels: Math.max(leastNamesPixels - gapPixels, widthPixels * 0.35),
  })
  const longest = Math.max(0, ...shown.map((row) => pairName(row).length))
  const namesPixels = placed.namesAbove
    ? 0
    : Math.max(leastNamesPixels, longest * glyphPixels + gapPixels)
  const heightPixels = placed.heightPixels + axisPixels
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls, and a page of charts is no page of landmarks
    <div ref={section} role="group" className={styles.plot} aria-label={label}>
      <ResponsiveContainer
        width="100%"
        height={heightPixels}
        initialDimension={{ width: firstPixels, height: heightPixels }}
        onResize={setWidthPixels}
      >
        <ScatterChart
          margin={{ top: 4, right: 14, bottom: 0, left: Math.max(namesPixels, tickPixels) }}
          accessibilityLayer={false}
        >
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
            dataKey="up"
            type="number"
            domain={[0, placed.heightPixels]}
            allowDataOverflow
            hide
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
            data={shown.map(({ difference }, index) => ({ difference, up: upOf(placed, index) }))}
            shape={() => <g />}
            isAnimationActive={false}
          />
          <PairsLayer rows={shown} placed={placed} lit={lit} onReach={setReached} />
        </ScatterChart>
      </ResponsiveContainer>
      <p className={styles.readout} aria-hidden="true">
        {reached ? sayPair(reached) : margin === null ? '' : 'The wash is your margin.'}
      </p>
    </div>
  )
}

/** How far a row's interval stands over the foot of the picture. */
function upOf(placed: PairPlaces, index: number): number {
  return placed.heightPixels - (placed.places[index]?.middlePixels ?? 0)
}

function sayPair(row: PairRow): string {
  return `${row.a} to ${row.b}: ${differenceText(row.difference)}, between ${intervalText(row.low, row.high)}`
}

interface PairsLayerProps {
  rows: readonly PairRow[]
  placed: PairPlaces
  lit: string | null
  onReach: (row: PairRow | null) => void
}

function PairsLayer({ rows, placed, lit, onReach }: PairsLayerProps) {
  const xScale = useXAxisScale()
  const yScale = useYAxisScale()
  const area = usePlotArea()
  if (!xScale || !yScale || !area) return null
  return rows.map((row, index) => {
    const y = Number(yScale(upOf(placed, index)))
    const { nameLines = [], heightPixels = rowPixels } = placed.places[index] ?? {}
    const rowTop = y + rowPixels / 2 - heightPixels
    const [low, high, middle] = [row.low, row.high, row.difference].map((value) =>
      Number(xScale(value)),
    )
    return (
      // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a mark of a picture that is read by keyboard, and does nothing
      <g
        key={pairName(row)}
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
            y={rowTop + 2}
            width={area.width - 2}
            height={heightPixels - 4}
          />
        ) : null}
        {nameLines.map((line, at) => (
          <text
            key={line}
            className={`${styles.pairName} ${styles.halo}`}
            x={placed.namesAbove ? 0 : area.x - gapPixels}
            y={placed.namesAbove ? rowTop + (at + 1) * linePixels : y + 4}
            textAnchor={placed.namesAbove ? 'start' : 'end'}
          >
            {line}
          </text>
        ))}
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
