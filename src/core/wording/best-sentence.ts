import { isPresent } from '@/core/findings/reason.ts'
import type { Best, FiellerSet, LevelName } from '@/core/findings/rung-shape.ts'
import type { Naming } from './answer-of-rung.ts'
import { placeText } from './level-text.ts'
import { plainNumber, withUnit } from './number-text.ts'

/** Where the best lies, in one sentence that claims no more than the data bound. `levels` are those that were tried. */
export function bestSentence(best: Best, naming: Naming, levels: readonly LevelName[]): string {
  const unit = naming.factor.unitOfMeasure
  const { crossing } = best
  if (crossing !== undefined && isPresent(crossing)) {
    const place = withUnit(placeText(crossing.at, levels), unit)
    return `The target is met near ${place}${boundText(crossing.fieller, levels, unit)}.`
  }
  const numbers = levels.filter((level) => typeof level === 'number')
  const low = withUnit(plainNumber(Math.min(...numbers)), unit)
  const high = withUnit(plainNumber(Math.max(...numbers)), unit)
  switch (best.answer) {
    case 'inside':
      return isPresent(best.vertex)
        ? `The best lies near ${withUnit(placeText(best.vertex, levels), unit)}${isPresent(best.fieller) ? boundText(best.fieller, levels, unit) : ''}.`
        : 'The best lies inside the range that was tried.'
    case 'past-low':
      return `The best is at or past the low end, ${low}.`
    case 'past-high':
      return `The best is at or past the high end, ${high}.`
    case 'least-inside':
      return `The worst lies inside the range, so the best is at one of its ends, ${low} or ${high}.`
    case 'flat':
      return 'Neither a line nor a curve shows over these levels, so no best is claimed.'
  }
}

/** The best's interval as an ending of a sentence: ", somewhere between 71.6 and 75.8 %", or that it is not bounded. */
export function boundText(set: FiellerSet, levels: readonly LevelName[], unit: string): string {
  const { low, high } = set
  if (set.kind === 'everything' || (low === null && high === null))
    return ', but these data do not bound it on either side'
  if (set.kind === 'outside')
    return ', but these data bound it only away from the middle, not from the ends'
  if (low === null)
    return `, at most ${withUnit(placeText(high ?? Number.NaN, levels), unit)} and not bounded below`
  if (high === null)
    return `, at least ${withUnit(placeText(low, levels), unit)} and not bounded above`
  return `, somewhere between ${placeText(low, levels)} and ${withUnit(placeText(high, levels), unit)}`
}
