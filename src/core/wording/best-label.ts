import { isPresent } from '@/core/findings/reason.ts'
import type { Best, LevelName } from '@/core/findings/rung-shape.ts'
import { placeText } from './level-text.ts'
import { withUnit } from './number-text.ts'

/** The words beside the best's interval under a chart: "best 73.6, between 71.6 and 75.8 %"; null where none is drawn. */
export function bestLabel(best: Best, levels: readonly LevelName[], unit: string): string | null {
  const { crossing } = best
  const [value, set] =
    crossing !== undefined && isPresent(crossing)
      ? [crossing.at, crossing.fieller]
      : [isPresent(best.vertex) ? best.vertex : null, isPresent(best.fieller) ? best.fieller : null]
  if (crossing === undefined && best.answer !== 'inside') return null
  if (value === null || set === null || set.kind !== 'interval') return null
  if (set.low === null || set.high === null)
    return `best ${withUnit(placeText(value, levels), unit)}`
  return `best ${placeText(value, levels)}, between ${placeText(set.low, levels)} and ${withUnit(placeText(set.high, levels), unit)}`
}
