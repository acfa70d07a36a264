import { useXAxisScale, useYAxisScale } from 'recharts'
import type { ResponseChart } from '@/core/figure/response-chart.ts'
import styles from './charts.module.css'

type Mean = ResponseChart['means'][number]

interface MeansLayerProps {
  means: readonly Mean[]
  /** A mean in words, for the readout and for those who do not see it. */
  say: (mean: Mean) => string
  onReach: (mean: Mean | null) => void
  /** Half the length of a mean's stroke. */
  half?: number
}

/** Means as bold crosses with their intervals; each can be reached by keyboard and then says its numbers. */
export function MeansLayer({ means, say, onReach, half = 9 }: MeansLayerProps) {
  const xScale = useXAxisScale()
  const yScale = useYAxisScale()
  if (!xScale || !yScale) return null
  return means.map((mean) => {
    const x = Number(xScale(mean.at))
    const y = Number(yScale(mean.estimate))
    const low = mean.low === null ? y : Number(yScale(mean.low))
    const high = mean.high === null ? y : Number(yScale(mean.high))
    return (
      // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a mark of a picture that is read by keyboard, and does nothing
      <g
        key={mean.levelId}
        className={styles.mark}
        role="img"
        aria-label={say(mean)}
        tabIndex={0}
        onFocus={() => onReach(mean)}
        onBlur={() => onReach(null)}
        onPointerEnter={() => onReach(mean)}
        onPointerLeave={() => onReach(null)}
      >
        <rect
          className={styles.reach}
          x={x - half - 5}
          y={Math.min(high, y - 12) - 3}
          width={2 * half + 10}
          height={Math.max(low, y + 12) - Math.min(high, y - 12) + 6}
          rx={3}
        />
        <line className={styles.interval} x1={x} x2={x} y1={low} y2={high} />
        <line className={styles.mean} x1={x - half} x2={x + half} y1={y} y2={y} />
      </g>
    )
  })
}
