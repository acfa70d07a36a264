import { useState } from 'react'
import { Area, Line } from 'recharts'
import { AfterFrame } from '@/app/kit/page/after-frame.tsx'
import type { ResponseChart as ResponseChartData } from '@/core/figure/response-chart.ts'
import { BestLayer } from './best-layer.tsx'
import { ChartBase, firstPlotPixels } from './chart-base.tsx'
import styles from './charts.module.css'
import { DotsLayer } from './dots-layer.tsx'
import { LevelLabels } from './level-labels.tsx'
import { MeansLayer } from './means-layer.tsx'

interface ResponseChartProps {
  chart: ResponseChartData
  fills: ReadonlyMap<string, string>
  label: string
  bestText: string | null
  marginText: string | null
  /** Only this taster's points stay strong; null shows all alike. */
  tasterId: string | null
  /** The level lit on the rail, whose column is raised; null for none. */
  lit: string | null
  say: (mean: ResponseChartData['means'][number]) => string
  heightPixels?: number
}

/**
 * One response against the factor, under the rail: every value as a dot, the line that is shown with its band or an even hump dashed,
 * means with intervals on top, the best.
 */
export function ResponseChart(props: ResponseChartProps) {
  const {
    chart,
    fills,
    label,
    bestText,
    marginText,
    tasterId,
    lit,
    say,
    heightPixels = 300,
  } = props
  const [reached, setReached] = useState<ResponseChartData['means'][number] | null>(null)
  const [widthPixels, setWidthPixels] = useState(firstPlotPixels)
  const rows = chart.curve.map((row) => ({ ...row, band: [row.low, row.high] }))
  const hump = chart.best !== null
  return (
    <>
      <ChartBase
        y={chart.y}
        heightPixels={heightPixels}
        topPixels={chart.best ? 54 : 20}
        rows={rows}
        label={label}
        onWidth={setWidthPixels}
        litAt={chart.means.find((mean) => mean.levelId === lit)?.at}
      >
        {hump ? null : (
          <Area
            dataKey="band"
            className={styles.band ?? ''}
            stroke="none"
            fill="var(--ink)"
            fillOpacity={1}
            isAnimationActive={false}
            activeDot={false}
          />
        )}
        <Line
          dataKey="fit"
          className={(hump ? styles.hump : styles.curve) ?? ''}
          stroke="var(--ink)"
          strokeWidth={1.5}
          dot={false}
          activeDot={false}
          isAnimationActive={false}
        />
        <AfterFrame>
          <DotsLayer chart={chart} fills={fills} tasterId={tasterId} lit={lit} />
        </AfterFrame>
        <BestLayer chart={chart} bestText={bestText} marginText={marginText} />
        <MeansLayer
          means={chart.means}
          say={say}
          onReach={setReached}
          half={chart.means.length > 6 ? 12 : 17}
        />
      </ChartBase>
      <LevelLabels
        levels={chart.means}
        fills={fills}
        meanWords={meanWords(chart)}
        lit={lit}
        named={!chart.x.ordered}
        widthPixels={widthPixels}
      />
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
