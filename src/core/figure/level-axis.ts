import { ticks } from 'd3-array'
import { tickLabel } from './tick-label.ts'

/** What the axis needs to know of a level; a level of a plan fits. */
export interface AxisLevel {
  id: string
  value: number | null
  label: string
  control: boolean
}

/** Where something stands on the axis of the factor: 0 at its left end, 1 at its right end. */
export interface LevelPosition {
  levelId: string
  label: string
  value: number | null
  control: boolean
  at: number
}

export interface LevelAxis {
  ordered: boolean
  /** The ends of the axis in the factor's unit; for a choice 0 and 1. */
  low: number
  high: number
  /** In the order of the axis: rising values, a choice in plan order. */
  positions: LevelPosition[]
  ticks: { value: number; label: string; at: number }[]
}

/** Room beyond the outermost levels, as a share of their span: half a tab fits in it. */
const marginShare = 0.16

/**
 * The axis that the level rail and every chart under it share: each level at its true distance, 0 to 1 from left to
 * right, with round ticks. Options of a choice stand evenly spaced, in plan order and without ticks. Levels that have
 * no number in an ordered factor cannot be: a mix of both is drawn as a choice. No levels give an empty axis.
 */
export function levelAxis(levels: readonly AxisLevel[]): LevelAxis {
  const values = levels.map((level) => level.value)
  const numbers = values.filter((value) => value !== null)
  if (numbers.length === 0 || numbers.length < levels.length) return choiceAxis(levels)
  const least = Math.min(...numbers)
  const most = Math.max(...numbers)
  const span = most - least || Math.max(Math.abs(most) * 0.2, 1)
  const low = least - span * marginShare
  const high = most + span * marginShare
  const at = (value: number) => (value - low) / (high - low)
  const marks = ticks(low, high, 10)
  return {
    ordered: true,
    low,
    high,
    positions: levels
      .map((level) => ({ ...named(level), at: at(level.value ?? Number.NaN) }))
      .toSorted((a, b) => a.at - b.at),
    ticks: marks.map((value) => ({ value, label: tickLabel(value, marks), at: at(value) })),
  }
}

function choiceAxis(levels: readonly AxisLevel[]): LevelAxis {
  const positions = levels.map((level, index) => ({
    ...named(level),
    at: (index + 0.5) / levels.length,
  }))
  return { ordered: false, low: 0, high: 1, positions, ticks: [] }
}

function named(level: AxisLevel) {
  return { levelId: level.id, label: level.label, value: level.value, control: level.control }
}
