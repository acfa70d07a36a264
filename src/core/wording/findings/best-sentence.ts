import { type StillInside, stillInside } from '@/core/findings/best/still-inside.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { Best, Crossing, FiellerSet, LevelName } from '@/core/findings/rungs/rung-shape.ts'
import { plainNumber, withUnit } from '@/core/units/number-text.ts'
import { placeText } from '@/core/wording/words/level-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import type { Naming } from './answer-of-rung.ts'

/** Where the best lies, in one sentence that claims no more than the data bound. `levels` are those that were tried. */
export function bestSentence(best: Best, naming: Naming, levels: readonly LevelName[]): string {
  const unit = naming.factor.unitOfMeasure
  const { crossing } = best
  if (crossing !== undefined && isPresent(crossing)) return crossingSentence(crossing, levels, unit)
  const numbers = levels.filter((level) => typeof level === 'number')
  const low = withUnit(plainNumber(Math.min(...numbers)), unit)
  const high = withUnit(plainNumber(Math.max(...numbers)), unit)
  switch (best.answer) {
    case 'inside':
      return isPresent(best.vertex)
        ? `The best lies near ${withUnit(placeText(best.vertex, levels), unit)}${isPresent(best.fieller) ? boundText(best.fieller, levels, unit) : ''}.`
        : 'The best lies inside the range that was tried.'
    case 'past-low':
      return pastText(`low end, ${low}`, stillInside(best, numbers), levels, unit)
    case 'past-high':
      return pastText(`high end, ${high}`, stillInside(best, numbers), levels, unit)
    case 'least-inside':
      return `The worst lies inside the range, so the best is at one of its ends, ${low} or ${high}.`
    case 'flat':
      return 'Neither a line nor a curve shows over these levels, so no best is claimed.'
  }
}

/** At or past an end; or, where the data leave the best inside the range too, no more than that it gets better towards it. */
function pastText(
  end: string,
  open: StillInside | null,
  levels: readonly LevelName[],
  unit: string,
): string {
  if (open === null) return `The best is at or past the ${end}.`
  const towards = `It gets better towards the ${end}, but where the best lies is not settled`
  if (open.from !== null)
    return `${towards}: it may be anywhere from ${withUnit(placeText(open.from, levels), unit)} up.`
  if (open.upTo !== null)
    return `${towards}: it may be anywhere from ${withUnit(placeText(open.upTo, levels), unit)} down.`
  return `${towards}.`
}

function crossingSentence(crossing: Crossing, levels: readonly LevelName[], unit: string): string {
  const target = plainNumber(crossing.target)
  if (crossing.at.length === 0) return `The target of ${target} is not reached at any level.`
  const places = crossing.at.map((at) => withUnit(placeText(at, levels), unit))
  const [stretch, other] = crossing.stretches
  const bound =
    stretch && !other && places.length === 1
      ? boundText({ kind: 'interval', ...stretch }, levels, unit)
      : ', but the data do not bound it to one stretch'
  return `The target of ${target} is met near ${listText(places)}${bound}.`
}

/**
 * The best's interval as an ending of a sentence: ", somewhere between 71.6 and 75.8 %", or that it is not bounded. An end
 * beyond the levels tried is not named: there the curve was only drawn on.
 */
export function boundText(set: FiellerSet, levels: readonly LevelName[], unit: string): string {
  const { low, high } = withinTried(set, levels)
  if (set.kind === 'outside')
    return ', but these data bound it only away from the middle, not from the ends'
  if (set.kind === 'everything' || (low === null && high === null))
    return ', but these data do not bound it on either side'
  if (low === null)
    return `, at most ${withUnit(placeText(high ?? Number.NaN, levels), unit)} and not bounded below`
  if (high === null)
    return `, at least ${withUnit(placeText(low, levels), unit)} and not bounded above`
  return `, somewhere between ${placeText(low, levels)} and ${withUnit(placeText(high, levels), unit)}`
}

/** An interval without the ends that lie beyond the lowest and highest level tried. */
export function withinTried(
  span: { low: number | null; high: number | null },
  levels: readonly LevelName[],
): { low: number | null; high: number | null } {
  const tried = levels.filter((level) => typeof level === 'number')
  const { low, high } = span
  return {
    low: low !== null && low < Math.min(...tried) ? null : low,
    high: high !== null && high > Math.max(...tried) ? null : high,
  }
}
