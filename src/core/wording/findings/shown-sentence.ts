import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import type {
  Place,
  Shown,
  ShownBend,
  ShownLine,
  ShownPair,
} from '@/core/findings/evidence/evidence-shape.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { LevelName } from '@/core/findings/table/score-table.ts'
import { decimalText, plainNumber, signedText, withUnit } from '@/core/units/number-text.ts'
import { levelNameText, placeText } from '@/core/wording/words/level-text.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import { withinScale } from '@/core/wording/words/within-scale.ts'
import type { Naming } from './answer-of-rung.ts'
import { differenceDecimals } from './difference-text.ts'
import { levelInWords } from './named-in-findings.ts'

/** What is spoken of when a conclusion is put in words. */
export interface Spoken {
  /** The response as it was named. */
  name: string
  conclusion: Conclusion
  naming: Naming
  levels: readonly LevelName[]
}

/** One thing that is shown of the factor, in a sentence without its end: "Crispness falls as hydration rises, by 2.1 …". */
export function shownSentence(one: Shown, spoken: Spoken): string {
  if (one.is === 'line') return lineSentence(one, spoken)
  return one.is === 'bend' ? bendSentence(one, spoken) : pairsSentence(one, spoken)
}

function lineSentence({ goes, size }: ShownLine, { name, naming, conclusion }: Spoken): string {
  const start = `${asSentenceStart(name)} ${goes} as ${midSentence(naming.factor.name)} rises`
  if (size === null) return `${start}; by how much is not settled`
  const [first, last] = size.between
  const decimals = differenceDecimals(size.difference)
  const { low, high } = withinScale(size, naming.scale)
  const [from, to] = size.difference < 0 ? [-high, -low] : [low, high]
  const by = decimalText(Math.abs(size.difference), decimals)
  const way = size.difference < 0 ? 'lower' : 'higher'
  return `${start}: ${by} ${way} at ${levelInWords(last, naming)} than at ${levelInWords(first, naming)} (${signedText(from, decimals).replace('+', '')} to ${signedText(to, decimals).replace('+', '')})${againstMargin(size.beyond, conclusion)}`
}

function againstMargin(beyond: boolean, { tooSmall }: Conclusion): string {
  if (!isPresent(tooSmall)) return ''
  const margin = plainNumber(tooSmall.margin)
  if (beyond) return `, more than your margin of ${margin}`
  return tooSmall.allPairs ? `, yet all levels are within your margin of ${margin}` : ''
}

function bendSentence({ middle, inside }: ShownBend, spoken: Spoken): string {
  const { name, naming, conclusion, levels } = spoken
  const start = asSentenceStart(name)
  if (!inside)
    return `${start} bends along ${midSentence(naming.factor.name)}: the middle stands ${middle === 'high' ? 'above' : 'below'} the line between the ends; whether it lies beyond both ends is not settled`
  const { better, place } = conclusion
  const unit = naming.factor.unitOfMeasure
  if (better !== 'higher' && better !== 'lower')
    return `${start} is ${middle === 'high' ? 'highest' : 'lowest'} in between`
  if ((better === 'lower') !== (middle === 'low'))
    return `${start} is worst in between, so the best is at an end, ${levelNameText({ name: levels[0] ?? '' }, unit)} or ${levelNameText({ name: levels.at(-1) ?? '' }, unit)}`
  return `${start} is best in between${isPresent(place) ? `, ${stretchText(place, levels, unit)}` : ''}`
}

/** "somewhere from 68 to 80 %; if the hump is even, near 74 %": the stretch of a best in between. */
export function stretchText(
  { low, high, even }: Pick<Place, 'low' | 'high' | 'even'>,
  levels: readonly LevelName[],
  unit: string,
): string {
  const hump = even
    ? `; if the hump is even, near ${withUnit(placeText(even.at, levels), unit)}`
    : ''
  return `somewhere from ${edge(low)} to ${withUnit(edge(high), unit)}${hump}`
}

/** An end of a stretch: a level or the middle of two, with no more decimals than that takes. */
function edge(value: number): string {
  return plainNumber(Math.round(value * 1e4) / 1e4)
}

const mostNamed = 3

function pairsSentence(
  { against, pairs }: Extract<Shown, { is: 'pairs' }>,
  { name, naming }: Spoken,
): string {
  const largest = pairs.toSorted((a, b) => Math.abs(b.difference) - Math.abs(a.difference))
  const said = largest.slice(0, mostNamed).map((pair) => pairText(pair, naming))
  const rest = largest.length - said.length
  const more = rest > 0 ? [`${countText(rest, 'pair')} more`] : []
  const whom = against === 'usual' ? ' from your usual' : ''
  return `${asSentenceStart(name)} differs${whom}: ${listText([...said, ...more])}`
}

function pairText({ a, b, difference }: ShownPair, naming: Naming): string {
  const [higher, lower] = difference > 0 ? [b, a] : [a, b]
  const decimals = differenceDecimals(difference)
  return `${levelInWords(higher, naming)} is ${decimalText(Math.abs(difference), decimals)} above ${levelInWords(lower, naming)}`
}
