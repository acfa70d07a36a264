import type { AxisLevel } from './level-axis.ts'
import { type Appearance, choicePaint, type LevelPaint, rampPaint } from './level-ramp.ts'

/**
 * The paint of every level of a trial by its id: along the ramp in rising order where levels are numbers, by pattern
 * in plan order where they are options of a choice.
 */
export function levelPaints(
  levels: readonly AxisLevel[],
  appearance: Appearance,
): Map<string, LevelPaint> {
  const ordered = levels.every((level) => level.value !== null)
  const rising = ordered
    ? levels.toSorted((a, b) => (a.value ?? 0) - (b.value ?? 0))
    : Array.from(levels)
  return new Map(
    rising.map((level, index) => [
      level.id,
      ordered ? rampPaint(index, rising.length, appearance) : choicePaint(index, appearance),
    ]),
  )
}
