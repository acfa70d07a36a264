import type { LevelName } from '@/core/findings/rungs/rung-shape.ts'
import { withUnit } from '@/core/units/number-text.ts'
import { placeText } from '@/core/wording/words/level-text.ts'
import { withinTried } from './best-sentence.ts'

/** The words beside the best's interval under a chart: "best 73.6, between 71.6 and 75.8 %". */
export function bestLabel(
  span: { value: number; low: number | null; high: number | null },
  levels: readonly LevelName[],
  unit: string,
): string {
  const { value } = span
  const { low, high } = withinTried(span, levels)
  const best = `best ${placeText(value, levels)}`
  if (low !== null && high !== null)
    return `${best}, between ${placeText(low, levels)} and ${withUnit(placeText(high, levels), unit)}`
  if (low !== null) return `${best}, at least ${withUnit(placeText(low, levels), unit)}`
  if (high !== null) return `${best}, at most ${withUnit(placeText(high, levels), unit)}`
  return `best ${withUnit(placeText(value, levels), unit)}, not bounded`
}
