import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { Best } from '@/core/findings/rungs/rung-shape.ts'
import type { LevelName } from '@/core/findings/table/score-table.ts'
import { withUnit } from '@/core/units/number-text.ts'
import { placeText } from '@/core/wording/words/level-text.ts'

/** The even hump once more, at the levels as they were handled: one sentence beside the claimed one, empty where none is claimed or logged. */
export function asHandledSentence(
  { place }: Pick<Conclusion, 'place'>,
  { asHandled }: Best,
  levels: readonly LevelName[],
  unit: string,
): string {
  if (!isPresent(place) || place.even === null) return ''
  if (!isPresent(asHandled) || !isPresent(asHandled.vertex)) return ''
  return `At the levels as handled an even hump lies near ${withUnit(placeText(asHandled.vertex, levels), unit)}.`
}
