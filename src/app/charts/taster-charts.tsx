import { Line } from 'recharts'
import type { TasterCurve } from '@/core/figure/taster-curves.ts'
import type { ValueAxis } from '@/core/figure/value-axis.ts'
import { ChartBase } from './chart-base.tsx'
import styles from './charts.module.css'
import { levelStyle } from './level-fills.ts'

interface TasterChartsProps {
  curves: readonly TasterCurve[]
  y: ValueAxis
  fills: ReadonlyMap<string, string>
  nameOf: (tasterId: string) => string
  /** The level lit on the rail, whose column is raised in each; null for none. */
  lit: string | null
  /** The taster's own best in words. */
  say: (curve: TasterCurve) => string
}

interface Dot {
  cx: number
  cy: number
  payload: { levelId: string }
}

/** Each taster's own curve, side by side on the same axes, so that a panel that disagrees is seen. */
export function TasterCharts({ curves, y, fills, nameOf, say, lit }: TasterChartsProps) {
  return (
    <div className={styles.tasters}>
      {curves.map((curve) => (
        <figure key={curve.tasterId} className={styles.frame}>
          <ChartBase
            y={y}
            heightPixels={110}
            rows={curve.points}
            label={`${nameOf(curve.tasterId)}: ${say(curve)}`}
            fewTicks
            litAt={curve.points.find(({ levelId }) => levelId === lit)?.at}
          >
            <Line
              dataKey="mean"
              type="linear"
              stroke="var(--ink)"
              strokeWidth={1.5}
              isAnimationActive={false}
              activeDot={false}
              dot={(dot: unknown) => {
                const { cx, cy, payload } = dot as Dot
                const best = payload.levelId === curve.bestLevelId
                return (
                  <circle
                    key={payload.levelId}
                    className={styles.point}
                    cx={cx}
                    cy={cy}
                    r={best ? 6 : 4}
                    style={levelStyle(fills, payload.levelId)}
                  />
                )
              }}
            />
          </ChartBase>
          <figcaption>
            <b>{nameOf(curve.tasterId)}</b> {say(curve)}
          </figcaption>
        </figure>
      ))}
    </div>
  )
}
