import type { LevelName } from '@/core/findings/table/score-table.ts'
import { plainNumber, withUnit } from '@/core/units/number-text.ts'
import { placeText } from '@/core/wording/words/level-text.ts'

/** The words beside the best's stretch under a chart: "best from 68 to 80 %, near 74 % if the hump is even". */
export function bestLabel(
  span: { value: number; low: number | null; high: number | null },
  levels: readonly LevelName[],
  unit: string,
): string {
  const near = withUnit(placeText(span.value, levels), unit)
  const { low, high } = span
  if (low === null || high === null) return `best near ${near}, not bounded`
  const edge = (value: number) => plainNumber(Math.round(value * 1e4) / 1e4)
  return `best from ${edge(low)} to ${withUnit(edge(high), unit)}, near ${near} if the hump is even`
}
