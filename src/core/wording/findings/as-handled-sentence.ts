import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { Best, LevelName } from '@/core/findings/rungs/rung-shape.ts'
import { withUnit } from '@/core/units/number-text.ts'
import { placeText } from '@/core/wording/words/level-text.ts'

/** The best once more, at the levels as they were handled: one sentence beside the claimed one, empty where none is claimed or logged. */
export function asHandledSentence(
  best: Best | Absent,
  levels: readonly LevelName[],
  unit: string,
): string {
  if (!isPresent(best) || best.answer !== 'inside' || best.crossing) return ''
  const { asHandled } = best
  if (!isPresent(asHandled) || !isPresent(asHandled.vertex)) return ''
  return `At the levels as handled it lies near ${withUnit(placeText(asHandled.vertex, levels), unit)}.`
}
