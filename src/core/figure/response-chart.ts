import type { Response } from '@/core/trial/response.ts'
import type { BestSpan } from './best-span.ts'

import { type AxisLevel, type LevelAxis, levelAxis } from './level-axis.ts'
import { type ValueAxis, valueAxis } from './value-axis.ts'

export interface ChartInput {
  levels: readonly AxisLevel[]
  response: Pick<Response, 'scale' | 'margin'>
  /** Every recorded value, in the order of the log. */
  rows: readonly { levelId: string; tasterId: string | null; sessionId: string; value: number }[]
  means: readonly { levelId: string; estimate: number; low: number | null; high: number | null }[]
  /** The fitted line or parabola over the factor, with its band where it has one. */
  curve: readonly { level: number; fit: number; low: number | null; high: number | null }[] | null
  best: BestSpan | null
}

export interface ChartPoint {
  levelId: string
  tasterId: string | null
  sessionId: string
  value: number
  /** Its level's place, shifted sideways a little, 0 to 1. */
  at: number
}

export interface ResponseChart {
  x: LevelAxis
  y: ValueAxis
  points: ChartPoint[]
  means: {
    levelId: string
    label: string
    at: number
    estimate: number
    low: number | null
    high: number | null
  }[]
  curve: { at: number; fit: number; low: number | null; high: number | null }[]
  best: { at: number; fromAt: number; toAt: number; openLow: boolean; openHigh: boolean } | null
  /** The control's place and mean. */
  control: { at: number; estimate: number | null } | null
  /** The margin as a length on the upright axis, laid around the control's mean (or the best mean without a control). */
  margin: { around: number; low: number; high: number } | null
}

/**
 * One response against the factor, as data to draw: points jittered by their running number within the level (never by
 * chance), means with intervals, the curve with its band, the best's interval cut at the ends of the axis, control and
 * margin. Places are shares of the drawn width, the same as the rail's. Rows of levels that the plan does not name are
 * a programmer's mistake and throw.
 */
export function responseChart(input: ChartInput): ResponseChart {
  const x = levelAxis(input.levels)
  const means = meansOnAxis(input, x)
  const control = x.positions.find((position) => position.control)
  const controlMean = means.find((mean) => mean.levelId === control?.levelId)?.estimate ?? null
  const bestMean = means.length ? Math.max(...means.map((mean) => mean.estimate)) : null
  const around = controlMean ?? bestMean
  const { margin } = input.response
  return {
    x,
    y: valueAxis(input.response.scale, drawnValues(input)),
    points: pointsOnAxis(input, x),
    means,
    curve: (input.curve ?? []).map(({ level, ...rest }) => ({ at: placeOf(x, level), ...rest })),
    best: bestOnAxis(input.best, x),
    control: control ? { at: control.at, estimate: controlMean } : null,
    margin:
      margin === null || around === null
        ? null
        : { around, low: around - margin, high: around + margin },
  }
}

/** Where a value of the factor stands on the axis, 0 to 1 inside it. */
export function placeOf(axis: Pick<LevelAxis, 'low' | 'high'>, value: number): number {
  return (value - axis.low) / (axis.high - axis.low)
}

function pointsOnAxis(input: ChartInput, x: LevelAxis): ChartPoint[] {
  const room = jitterRoom(x)
  const seen = new Map<string, number>()
  return input.rows.map((row) => {
    const count = seen.get(row.levelId) ?? 0
    seen.set(row.levelId, count + 1)
    return { ...row, at: positionOf(x, row.levelId).at + jitter(count) * room }
  })
}

/** A quarter of the least distance between neighbours, at most a fortieth of the width. */
function jitterRoom(x: LevelAxis): number {
  const gaps = x.positions.slice(1).map(({ at }, index) => at - (x.positions[index]?.at ?? 0))
  return Math.min(0.025, ...gaps.map((gap) => gap / 4))
}

function meansOnAxis(input: ChartInput, x: LevelAxis) {
  return input.means
    .map((mean) => {
      const { at, label } = positionOf(x, mean.levelId)
      return { ...mean, label, at }
    })
    .toSorted((a, b) => a.at - b.at)
}

function bestOnAxis(best: BestSpan | null, x: LevelAxis): ResponseChart['best'] {
  if (best === null) return null
  const inside = (value: number) => Math.min(1, Math.max(0, placeOf(x, value)))
  const low = best.low ?? x.low
  const high = best.high ?? x.high
  return {
    at: inside(best.value),
    fromAt: inside(low),
    toAt: inside(high),
    openLow: best.low === null || best.low < x.low,
    openHigh: best.high === null || best.high > x.high,
  }
}

function drawnValues(input: ChartInput): number[] {
  const ends = [...input.means, ...(input.curve ?? [])].flatMap(({ low, high }) => [low, high])
  return [...input.rows.map((row) => row.value), ...ends.filter((end) => end !== null)]
}

function positionOf(x: LevelAxis, levelId: string) {
  const position = x.positions.find((candidate) => candidate.levelId === levelId)
  if (!position) throw new Error(`level ${levelId} is not on the axis`)
  return position
}

const goldenShare = (Math.sqrt(5) - 1) / 2

/**
 * A sideways shift between -1 and 1 for the row at `index`, so that equal scores do not hide one another: the
 * golden-ratio sequence, which spreads any number of rows evenly and is the same on every screen and in every print.
 */
export function jitter(index: number): number {
  const part = ((index + 1) * goldenShare) % 1
  return part * 2 - 1
}
