import { usePlotArea, useXAxisScale, useYAxisScale } from 'recharts'
import type { ResponseChart } from '@/core/figure/response-chart.ts'
import styles from './charts.module.css'

interface BestLayerProps {
  chart: ResponseChart
  bestText: string | null
}

/** Control, margin and the best's interval, which lies along the foot of the plot under the rail. */
export function BestLayer({ chart, bestText }: BestLayerProps) {
  const xScale = useXAxisScale()
  const yScale = useYAxisScale()
  const area = usePlotArea()
  if (!xScale || !yScale || !area) return null
  const x = (at: number) => Number(xScale(at))
  const inside = (value: number) =>
    Math.min(area.y + area.height, Math.max(area.y, Number(yScale(value))))
  const { best, control, margin } = chart
  const foot = area.y + area.height + 16
  const right = area.x + area.width - 1
  const controlMean = control?.estimate ?? null
  return (
    <g>
      {controlMean === null ? null : (
        <line
          className={styles.control}
          x1={area.x}
          x2={right}
          y1={inside(controlMean)}
          y2={inside(controlMean)}
        />
      )}
      {margin === null ? null : (
        <>
          <path
            className={styles.margin}
            d={`M${right - 5} ${inside(margin.high)}H${right}V${inside(margin.low)}H${right - 5}`}
          />
          <text x={right - 9} y={inside(margin.high) + 4} textAnchor="end">
            margin
          </text>
        </>
      )}
      {best === null ? null : (
        <>
          <line className={styles.best} x1={x(best.fromAt)} x2={x(best.toAt)} y1={foot} y2={foot} />
          <path className={styles.best} d={endMark(x(best.fromAt), foot, best.openLow ? 1 : 0)} />
          <path className={styles.best} d={endMark(x(best.toAt), foot, best.openHigh ? -1 : 0)} />
          <circle className={styles.filled} cx={x(best.at)} cy={foot} r={4.5} />
          {bestText === null ? null : (
            <text x={x(best.at)} y={foot + 21} textAnchor={anchorAt(best.at)}>
              {bestText}
            </text>
          )}
        </>
      )}
    </g>
  )
}

function endMark(x: number, y: number, open: number): string {
  return open === 0
    ? `M${x} ${y - 5}V${y + 5}`
    : `M${x + open * 7} ${y - 5}L${x} ${y}L${x + open * 7} ${y + 5}`
}

function anchorAt(at: number): 'start' | 'middle' | 'end' {
  if (at < 0.3) return 'start'
  return at > 0.7 ? 'end' : 'middle'
}
