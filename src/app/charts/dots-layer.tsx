import { usePlotArea, useXAxisScale, useYAxisScale } from 'recharts'
import { dotPlaces } from '@/core/figure/dot-places.ts'
import type { ResponseChart } from '@/core/figure/response-chart.ts'
import styles from './charts.module.css'
import { levelStyle } from './level-fills.ts'

interface DotsLayerProps {
  chart: ResponseChart
  fills: ReadonlyMap<string, string>
  /** Only this taster's dots stay strong; null shows all alike. */
  tasterId: string | null
  /** The level lit on the rail: its dots are full, all others outlined. */
  lit: string | null
}

/** Every recorded value as a dot that can be counted. */
export function DotsLayer({ chart, fills, tasterId, lit }: DotsLayerProps) {
  const xScale = useXAxisScale()
  const yScale = useYAxisScale()
  const area = usePlotArea()
  if (!xScale || !yScale || !area) return null
  const levelAt = new Map(chart.x.positions.map(({ levelId, at }) => [levelId, Number(xScale(at))]))
  const places = [...levelAt.values()].toSorted((a, b) => a - b)
  const gaps = places.slice(1).map((at, index) => at - (places[index] ?? 0))
  const heights = chart.points.map(({ value }) => Number(yScale(value)))
  const { offsets, radiusPixels } = dotPlaces(
    chart.points.map(({ levelId }, index) => ({ levelId, heightPixels: heights[index] ?? 0 })),
    Math.min(64, ...gaps.map((gap) => gap * 0.75)),
    Math.abs(Number(yScale(chart.y.low + 1)) - Number(yScale(chart.y.low))),
  )
  return chart.points.map(({ levelId, tasterId: own }, index) => {
    const { across = 0, up = 0 } = offsets[index] ?? {}
    const outlined = lit !== null && lit !== levelId
    const faded = tasterId !== null && own !== tasterId
    return (
      <circle
        // biome-ignore lint/suspicious/noArrayIndexKey: a value has no name of its own, and its place in the log never changes
        key={index}
        className={[styles.point, faded ? styles.faded : '', outlined ? styles.outlined : ''].join(
          ' ',
        )}
        cx={(levelAt.get(levelId) ?? 0) + across}
        cy={(heights[index] ?? 0) - up}
        r={radiusPixels}
        style={levelStyle(fills, levelId)}
      />
    )
  })
}
