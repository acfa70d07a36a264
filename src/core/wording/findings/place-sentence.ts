import { isPresent } from '@/core/findings/reason.ts'
import type { Best, Crossing } from '@/core/findings/rungs/rung-shape.ts'
import type { LevelName } from '@/core/findings/table/score-table.ts'
import { plainNumber, withUnit } from '@/core/units/number-text.ts'
import { levelNameText, placeText } from '@/core/wording/words/level-text.ts'
import { asSentenceStart, listText } from '@/core/wording/words/list-text.ts'
import { levelInWords } from './named-in-findings.ts'
import { reasonText } from './reason-text.ts'
import { type Spoken, stretchText } from './shown-sentence.ts'

/** Where the best lies, in one sentence that claims no more than the conclusion: the stretch of levels that may be best, or where a target is met. */
export function placeSentence(spoken: Spoken, best: Best | null): string {
  const { conclusion, naming, levels } = spoken
  const unit = naming.factor.unitOfMeasure
  if (conclusion.better === 'target') return targetSentence(spoken, best)
  const { place, shown, better } = conclusion
  if (!isPresent(place)) return reasonText(place)
  const good = better === 'lower' ? 'low' : 'high'
  const inside = shown.some((one) => one.is === 'bend' && one.inside && one.middle === good)
  if (inside)
    return `${asSentenceStart(`the best lies in between, ${stretchText(place, levels, unit)}`)}.`
  const ends = [0, levels.length - 1].map((at) => levelNameText({ name: levels[at] ?? '' }, unit))
  if (shown.some((one) => one.is === 'bend' && one.inside))
    return `The best lies at an end, ${listText(ends, 'or')}, or past it.`
  const { low, high, openLow, openHigh, candidates } = place
  const stretch = `somewhere from ${plainNumber(low)} to ${withUnit(plainNumber(high), unit)}`
  if (conclusion.rung !== 'factor')
    return openLow && openHigh
      ? `Of these ${conclusion.rung ?? 'pieces'} alone the best may lie anywhere in the range.`
      : `Of these ${conclusion.rung ?? 'pieces'} alone, and if there is one hump, the best lies ${stretch}.`
  if (shown.length === 0)
    return openLow && openHigh
      ? 'No best is claimed: it may lie anywhere in the range that was tried, or past its ends.'
      : `No best is claimed, since nothing is shown; if there is one, as a single hump, these data put it ${stretch}.`
  const [only, other] = candidates
  if (only !== undefined && other === undefined) {
    const past =
      openLow || openHigh ? '; better still may lie past it, where nothing was tried' : ''
    return `Of the levels tried ${levelInWords(only, naming)} is the best${past}.`
  }
  if (openLow && openHigh)
    return 'The best may lie anywhere in the range that was tried, or past its ends.'
  const end = openLow ? 'low' : openHigh ? 'high' : null
  const past = end === null ? '' : `, perhaps at or past the ${end} end`
  return `If there is one hump, the best lies ${stretch}${past}.`
}

/** A target is said to be met only where something is shown along the levels. */
function targetSentence({ conclusion, naming, levels }: Spoken, best: Best | null): string {
  const crossing = best?.crossing
  if (conclusion.shown.length === 0 || !crossing || !isPresent(crossing))
    return 'Where the target is met is not settled: nothing is shown along the levels.'
  return crossingSentence(crossing, levels, naming.factor.unitOfMeasure)
}

function crossingSentence(crossing: Crossing, levels: readonly LevelName[], unit: string): string {
  const target = plainNumber(crossing.target)
  if (crossing.at.length === 0) return `The target of ${target} is not reached at any level.`
  const places = crossing.at.map((at) => withUnit(placeText(at, levels), unit))
  const [stretch, other] = crossing.stretches
  const bounded =
    stretch && !other && places.length === 1 && stretch.low !== null && stretch.high !== null
      ? `, somewhere from ${placeText(stretch.low, levels)} to ${withUnit(placeText(stretch.high, levels), unit)}`
      : ', but the data do not bound it to one stretch'
  return `By the curve the target of ${target} is met near ${listText(places)}${bounded}.`
}
