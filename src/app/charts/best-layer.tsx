import { usePlotArea, useXAxisScale, useYAxisScale } from 'recharts'
import type { ResponseChart } from '@/core/figure/response-chart.ts'
import styles from './charts.module.css'

interface BestLayerProps {
  chart: ResponseChart
  bestText: string | null
  marginText: string | null
}

const letterPixels = 6.6
const linePixels = 15

/** The margin as a bracket at the right, and where the best may lie: a bracket over the plot, its ends dotted down to the beam. */
export function BestLayer({ chart, bestText, marginText }: BestLayerProps) {
  const xScale = useXAxisScale()
  const yScale = useYAxisScale()
  const area = usePlotArea()
  if (!xScale || !yScale || !area) return null
  const x = (at: number) => Number(xScale(at))
  const inside = (value: number) =>
    Math.min(area.y + area.height, Math.max(area.y, Number(yScale(value))))
  const { best, margin } = chart
  const top = area.y - 12
  const foot = area.y + area.height
  const right = area.x + area.width - 1
  return (
    <g>
      {margin === null ? null : (
        <>
          <path
            className={styles.margin}
            d={`M${right - 6} ${inside(margin.around)}H${right}V${inside(margin.low)}H${right - 6}`}
          />
          {marginText === null ? null : (
            <text x={right} y={inside(margin.around) - 6} textAnchor="end" className={styles.halo}>
              {marginText}
            </text>
          )}
        </>
      )}
      {best === null ? null : (
        <>
          <line className={styles.best} x1={x(best.fromAt)} x2={x(best.toAt)} y1={top} y2={top} />
          <path className={styles.best} d={endMark(x(best.fromAt), top, best.openLow ? 1 : 0)} />
          <path className={styles.best} d={endMark(x(best.toAt), top, best.openHigh ? -1 : 0)} />
          <path className={styles.best} d={`M${x(best.at)} ${top}V${top - 6}`} />
          {best.openLow ? null : (
            <path className={styles.bound} d={`M${x(best.fromAt)} ${top + 6}V${foot}`} />
          )}
          {best.openHigh ? null : (
            <path className={styles.bound} d={`M${x(best.toAt)} ${top + 6}V${foot}`} />
          )}
          {bestText === null
            ? null
            : linesOf(bestText, area.width).map((line, at, lines) => (
                <text
                  key={line}
                  x={within(x(best.at), (line.length * letterPixels) / 2, area.x, right)}
                  y={top - 11 - (lines.length - 1 - at) * linePixels}
                  textAnchor="middle"
                >
                  {line}
                </text>
              ))}
        </>
      )}
    </g>
  )
}

function endMark(x: number, y: number, open: number): string {
  return open === 0
    ? `M${x} ${y - 6}V${y + 6}`
    : `M${x + open * 7} ${y - 6}L${x} ${y}L${x + open * 7} ${y + 6}`
}

/** The middle of a text of half this width that stays between the edges. */
function within(at: number, half: number, low: number, high: number): number {
  return Math.max(low + half, Math.min(high - half, at))
}

/** One line where it fits; else two, parted after the comma. */
function linesOf(text: string, width: number): string[] {
  const comma = text.indexOf(', ')
  if (comma < 0 || text.length * letterPixels <= width) return [text]
  return [text.slice(0, comma + 1), text.slice(comma + 2)]
}
