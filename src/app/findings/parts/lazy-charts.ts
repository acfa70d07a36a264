import { idleMoment } from '@/app/kit/page/idle-moment.ts'
import { latePart } from '@/app/kit/page/late-view.tsx'

/** The chart of the first screen. */
export const responseChart = latePart(
  async () => (await import('@/app/charts/response-chart.tsx')).ResponseChart,
)
export const pairsChart = latePart(
  async () => (await import('@/app/charts/pairs-chart.tsx')).PairsChart,
)
export const tasterCharts = latePart(
  async () => (await import('@/app/charts/taster-charts.tsx')).TasterCharts,
)
export const smallMultiples = latePart(
  async () => (await import('@/app/charts/small-multiples.tsx')).SmallMultiples,
)

const charts = [responseChart, pairsChart, tasterCharts, smallMultiples]

/** Begins to load the charts' program while the findings are still being worked out; a chart that fails to load says so itself. */
export function fetchCharts(): void {
  void Promise.allSettled(charts.map((chart) => chart.fetch()))
}

/** Loads the charts' program before anybody needs it, each in an idle moment of its own; what fails is loaded when it is needed. */
export async function fetchChartsAhead(): Promise<void> {
  for (const chart of charts) {
    await idleMoment()
    await chart.fetch().catch(() => null)
  }
}
