import { lazy } from 'react'
import { latePart } from '@/app/kit/page/late-view.tsx'

const pairs = () => import('@/app/charts/pairs-chart.tsx')
const tasters = () => import('@/app/charts/taster-charts.tsx')
const multiples = () => import('@/app/charts/small-multiples.tsx')

/** The chart of the first screen. */
export const responseChart = latePart(
  async () => (await import('@/app/charts/response-chart.tsx')).ResponseChart,
)
export const PairsChart = lazy(async () => ({ default: (await pairs()).PairsChart }))
export const TasterCharts = lazy(async () => ({ default: (await tasters()).TasterCharts }))
export const SmallMultiples = lazy(async () => ({ default: (await multiples()).SmallMultiples }))

/** Begins to load the charts' program while the findings are still being worked out; a chart that fails to load says so itself. */
export function fetchCharts(): void {
  void Promise.allSettled([responseChart.fetch(), pairs(), tasters(), multiples()])
}
