import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import { widestDifference } from '@/core/wording/words/within-scale.ts'
import type { Naming } from './answer-of-rung.ts'
import { differenceDecimals } from './difference-text.ts'
import { levelInWords } from './named-in-findings.ts'
import type { Spoken } from './shown-sentence.ts'

const kinds = {
  rise: 'a change from the first to the last level',
  hump: 'a hump over both ends',
  pair: 'a difference of two levels',
} as const

/** "with 3 sessions only a rise of 1.9 would have shown": what nothing shown leaves open. */
export function wouldShowWords(
  { wouldShow, sessions, repeats }: Conclusion,
  naming: Naming,
): string {
  const made = repeats === null ? countText(sessions, 'session') : `${repeats} of each level`
  if (!wouldShow) return `${made} cannot show it`
  const { of, size } = wouldShow
  const widest = widestDifference(naming.scale)
  if (widest !== null && size >= widest)
    return `with ${made} and this scatter hardly anything that fits on the scale would have shown`
  // Two levels have no first and last to a baker.
  const what = naming.levels.length === 2 ? 'a difference between the two levels' : kinds[of]
  return `with ${made} only ${what} of about ${decimalText(size, differenceDecimals(size))} would have shown`
}

/** Which way it leans, never as if one more session would settle it; empty where it leans no way. */
export function leanSentence({ conclusion, name, naming }: Spoken): string {
  const { lean } = conclusion
  if (!lean) return ''
  const factor = midSentence(naming.factor.name)
  const way =
    lean.is === 'line'
      ? `towards ${lean.goes === 'rises' ? 'more' : 'less'} ${midSentence(name)} with more ${factor}`
      : lean.is === 'bend'
        ? `towards ${lean.middle === 'high' ? 'more' : 'less'} ${midSentence(name)} in between`
        : `towards ${levelInWords(lean.higher, naming)} above ${levelInWords(lean.lower, naming)}`
  return `It leans ${way}, but chance alone leans as much in one of five such trials.`
}
