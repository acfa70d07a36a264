import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { ScoreLevel, ScoreTable } from '@/core/findings/table/score-table.ts'
import { bestSpan } from './best-span.ts'
import type { AxisLevel } from './level-axis.ts'
import { type ChartInput, type ResponseChart, responseChart } from './response-chart.ts'

export interface FittedPoint {
  at: number
  fit: number
  low: number
  high: number
}

/** The levels of a score table as the axis takes them; a level is known by its id. */
export function axisLevels(levels: readonly ScoreLevel[]): AxisLevel[] {
  return levels.map(({ id, value, label, control }) => ({ id, value, label, control }))
}

/**
 * The chart of one response at one rung of the evidence: its rows, the rung's marginal means with their intervals, its
 * curve, and the best as far as the rung bounds it. Without a rung only the points are drawn.
 */
export function chartOfResponse(
  scores: ScoreTable,
  responseIndex: number,
  found: ResponseFindings,
  rung: 'pieces' | 'doughs' | 'factor' | null,
  curve: readonly FittedPoint[] | null,
): ResponseChart {
  const response = scores.responses[responseIndex]
  if (!response) throw new Error(`no response ${responseIndex}`)
  const answer = rung === null ? null : found[rung]
  const present = answer !== null && isPresent(answer) ? answer : null
  return responseChart({
    levels: axisLevels(scores.levels),
    response: { scale: scaleOf(response.scale), margin: response.margin },
    rows: rowsOf(scores, responseIndex),
    means: (present?.means ?? []).map(({ level, estimate, low, high }) => ({
      levelId: level,
      estimate,
      low,
      high,
    })),
    curve: curve === null ? null : curve.map(({ at, ...rest }) => ({ level: at, ...rest })),
    best: bestSpan(
      found.conclusion,
      present !== null && isPresent(present.best) ? present.best : null,
    ),
  })
}

/** Where no rung can compare, the means that describe each level stand in, without intervals. */
export function withDescribedMeans(chart: ResponseChart, found: ResponseFindings): ResponseChart {
  return chart.means.length > 0 ? chart : described(chart, found)
}

/** One evening alone: dots and plain means, no interval, margin or best, which would claim more than an order. */
export function withMeansAlone(chart: ResponseChart, found: ResponseFindings): ResponseChart {
  return { ...described(chart, found), curve: [], best: null, margin: null }
}

function described(chart: ResponseChart, found: ResponseFindings): ResponseChart {
  const means = chart.x.positions.flatMap(({ levelId, label, at }) => {
    const mean = found.levels.find(({ level }) => level === levelId)?.mean
    return mean !== undefined && isPresent(mean)
      ? [{ levelId, label, at, estimate: mean, low: null, high: null }]
      : []
  })
  return { ...chart, means }
}

/** Every recorded value of one response, by level and taster, in the order of the table. */
export function rowsOf(scores: ScoreTable, responseIndex: number): ChartInput['rows'] {
  return scores.rows.flatMap((row) => {
    const value = row.values[responseIndex]
    const level = scores.levels[row.level]
    return value == null || !level
      ? []
      : [{ levelId: level.id, tasterId: row.taster, sessionId: row.session, value }]
  })
}

function scaleOf(scale: 'nine-point' | 'just-about-right' | 'measured') {
  if (scale === 'nine-point') return { kind: scale, anchors: [] }
  if (scale === 'just-about-right') return { kind: scale, low: '', high: '' }
  return { kind: scale, unitOfMeasure: '', measure: 'own' as const }
}
