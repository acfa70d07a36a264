import type { Pooled } from '@/core/findings/pooled/pooled-trials.ts'
import type { AxisLevel } from './level-axis.ts'
import { type ResponseChart, responseChart } from './response-chart.ts'

/** The levels of trials that are looked at together, as the axis takes them: known by their place in the common list. */
export function pooledAxisLevels({ levels }: Pick<Pooled, 'levels'>): AxisLevel[] {
  return levels.map(({ name, value }, at) => ({
    ...{ id: String(at), value, label: String(name), control: false },
  }))
}

/**
 * Several trials in one chart: the mean of every dough (or level in a session) as a dot that carries its trial where a
 * trial's own chart carries a taster, the pooled means with their intervals, the pooled curve, and the top of an even hump
 * where it is bounded.
 */
export function pooledChart(pooled: Pooled): ResponseChart {
  const { model, points, response } = pooled
  const { levels, best, curve } = model
  const bounded = best.ok && best.isTop && best.fieller.kind === 'interval' ? best : null
  return responseChart({
    levels: pooledAxisLevels(pooled),
    response: response ?? {
      scale: { kind: 'measured', unitOfMeasure: '', measure: 'own' },
      margin: null,
    },
    rows: points.map(({ trial, session, level, value }) => ({
      ...{ levelId: String(level), tasterId: String(trial), sessionId: String(session), value },
    })),
    means: levels.ok
      ? levels.means.map(({ level, estimate, low, high }) => ({
          ...{ levelId: String(level), estimate, low, high },
        }))
      : [],
    curve: curve.ok
      ? curve.points.map(({ level, estimate, low, high }) => ({ level, fit: estimate, low, high }))
      : null,
    best:
      bounded && bounded.fieller.kind === 'interval'
        ? { value: bounded.vertex, low: bounded.fieller.low, high: bounded.fieller.high }
        : null,
  })
}
