import { useState } from 'react'
import { Area, Line, Scatter } from 'recharts'
import type { ResponseChart as ResponseChartData } from '@/core/figure/response-chart.ts'
import { BestLayer } from './best-layer.tsx'
import { ChartBase } from './chart-base.tsx'
import styles from './charts.module.css'
import { LevelLabels } from './level-labels.tsx'
import { MeansLayer } from './means-layer.tsx'

interface ResponseChartProps {
  chart: ResponseChartData
  fills: ReadonlyMap<string, string>
  label: string
  bestText: string | null
  /** Only this taster's points stay strong; null shows all alike. */
  tasterId: string | null
  /** The level lit on the rail, whose column is raised; null for none. */
  lit: string | null
  say: (mean: ResponseChartData['means'][number]) => string
  heightPixels?: number
}

/** One response against the factor, under the rail: all points, curve with band, means with intervals, the best. */
export function ResponseChart(props: ResponseChartProps) {
  const { chart, fills, label, bestText, tasterId, lit, say, heightPixels = 340 } = props
  const [reached, setReached] = useState<ResponseChartData['means'][number] | null>(null)
  const rows = chart.curve.map((row) => ({ ...row, band: [row.low, row.high] }))
  const points = chart.points.map((point) => ({ ...point, y: point.value }))
  return (
    <>
      <ChartBase
        y={chart.y}
        heightPixels={heightPixels}
        footPixels={chart.best ? 46 : 8}
        rows={rows}
        label={label}
        litAt={chart.means.find((mean) => mean.levelId === lit)?.at}
      >
        <Area
          dataKey="band"
          className={styles.band ?? ''}
          stroke="none"
          fill="var(--ink)"
          fillOpacity={1}
          isAnimationActive={false}
          activeDot={false}
        />
        <Line
          dataKey="fit"
          className={styles.curve ?? ''}
          stroke="var(--ink)"
          strokeWidth={1.5}
          dot={false}
          activeDot={false}
          isAnimationActive={false}
        />
        <Scatter
          data={points}
          dataKey="y"
          isAnimationActive={false}
          shape={(point: unknown) => (
            <Point point={point as PlacedPoint} fills={fills} tasterId={tasterId} lit={lit} />
          )}
        />
        <BestLayer chart={chart} bestText={bestText} />
        <MeansLayer means={chart.means} say={say} onReach={setReached} />
      </ChartBase>
      <LevelLabels levels={chart.means} fills={fills} meanWords={meanWords(chart)} lit={lit} />
      <p className={styles.readout} aria-hidden="true">
        {reached ? say(reached) : ''}
      </p>
    </>
  )
}

/** "mean of 24", or "mean" where the levels were scored unequally often. */
function meanWords({ points, means }: ResponseChartData): string {
  const counts = means.map(
    ({ levelId }) => points.filter((point) => point.levelId === levelId).length,
  )
  const [first] = counts
  return first !== undefined && counts.every((count) => count === first)
    ? `mean of ${first}`
    : 'mean'
}

interface PlacedPoint {
  cx: number
  cy: number
  payload: { levelId: string; tasterId: string | null }
}

interface PointProps {
  point: PlacedPoint
  fills: ReadonlyMap<string, string>
  tasterId: string | null
  /** The level lit on the rail: its dots are full, all others outlined. */
  lit: string | null
}

function Point({ point, fills, tasterId, lit }: PointProps) {
  const { levelId } = point.payload
  const faded = tasterId !== null && point.payload.tasterId !== tasterId
  const outlined = lit !== null && lit !== levelId
  return (
    <circle
      className={[styles.point, faded ? styles.faded : '', outlined ? styles.outlined : ''].join(
        ' ',
      )}
      cx={point.cx}
      cy={point.cy}
      r={4}
      style={outlined ? { stroke: fills.get(levelId) } : { fill: fills.get(levelId) }}
    />
  )
}
