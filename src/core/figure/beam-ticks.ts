import { ticks } from 'd3-array'
import type { LevelAxis } from './level-axis.ts'

/** The strokes of the beam of a level rail: round places 0 to 1 along it, every one that is a label's long. A choice has none. */
export function beamTicks(axis: LevelAxis): { at: number; long: boolean }[] {
  if (!axis.ordered) return []
  const { low, high } = axis
  const long = new Set(ticks(low, high, 5).map((value) => value.toPrecision(12)))
  return ticks(low, high, 20).map((value) => ({
    at: (value - low) / (high - low),
    long: long.has(value.toPrecision(12)),
  }))
}
