import { useState } from 'react'
import { Line } from 'recharts'
import type { ResponseChart } from '@/core/figure/response-chart.ts'
import { ChartBase } from './chart-base.tsx'
import styles from './charts.module.css'
import { MeansLayer } from './means-layer.tsx'

export interface Multiple {
  id: string
  name: string
  chart: ResponseChart
  say: (mean: ResponseChart['means'][number]) => string
}

interface SmallMultiplesProps {
  multiples: readonly Multiple[]
  /** The level lit on the rail, whose column is raised in each; null for none. */
  lit: string | null
}

/** All responses under one another on the rail's axis: means with intervals only, to see them move together or apart. */
export function SmallMultiples({ multiples, lit }: SmallMultiplesProps) {
  return (
    <div className={styles.multiples}>
      {multiples.map((multiple) => (
        <OneMultiple key={multiple.id} {...multiple} lit={lit} />
      ))}
    </div>
  )
}

function OneMultiple({ name, chart, say, lit }: Multiple & { lit: string | null }) {
  const [reached, setReached] = useState<ResponseChart['means'][number] | null>(null)
  return (
    <figure className={styles.frame}>
      <figcaption className={styles.head}>
        <b>{name}</b> <span className={styles.title}>{reached ? say(reached) : ''}</span>
      </figcaption>
      <ChartBase
        y={chart.y}
        heightPixels={120}
        rows={chart.means}
        label={name}
        fewTicks
        litAt={chart.means.find(({ levelId }) => levelId === lit)?.at}
      >
        <Line
          dataKey="estimate"
          type="linear"
          stroke="var(--edge)"
          dot={false}
          activeDot={false}
          isAnimationActive={false}
        />
        <MeansLayer means={chart.means} say={say} onReach={setReached} />
      </ChartBase>
    </figure>
  )
}
