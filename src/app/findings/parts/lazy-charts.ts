import { lazy } from 'react'

const response = () => import('@/app/charts/response-chart.tsx')
const pairs = () => import('@/app/charts/pairs-chart.tsx')
const tasters = () => import('@/app/charts/taster-charts.tsx')
const multiples = () => import('@/app/charts/small-multiples.tsx')

export const ResponseChart = lazy(async () => ({ default: (await response()).ResponseChart }))
export const PairsChart = lazy(async () => ({ default: (await pairs()).PairsChart }))
export const TasterCharts = lazy(async () => ({ default: (await tasters()).TasterCharts }))
export const SmallMultiples = lazy(async () => ({ default: (await multiples()).SmallMultiples }))

/** Begins to load the charts' program while the findings are still being worked out; a chart that fails to load says so itself. */
export function fetchCharts(): void {
  void Promise.allSettled([response(), pairs(), tasters(), multiples()])
}
