import { isPresent } from '@/core/findings/reason.ts'
import type { JustAboutRight } from '@/core/findings/response-findings-shape.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import { differenceDecimals, intervalText } from './difference-text.ts'
import { reasonText } from './reason-text.ts'

type Drop = JustAboutRight['drops'][number]

/** "58 % just about right, 27 % too little, 15 % too much". */
export function sharesText({ below, right, above }: JustAboutRight): string {
  return `${percent(right)} % just about right, ${percent(below)} % too little, ${percent(above)} % too much`
}

/** What one side cost the main response, within taster and piece, or why that cannot be said. */
export function dropText(found: Drop, mainName: string): string {
  const side = found.side === 'below' ? 'too little' : 'too much'
  const { drop, low, high } = found
  if (!isPresent(drop) || !isPresent(low) || !isPresent(high))
    return `Called ${side}: ${isPresent(drop) ? 'no interval can be given.' : reasonText(drop)}`
  const decimals = differenceDecimals((high - low) / 2)
  const way = drop >= 0 ? 'lower' : 'higher'
  const cost = `${decimalText(Math.abs(drop), decimals)} ${way}`
  const [from, to] = drop >= 0 ? [low, high] : [-high, -low]
  return `Called ${side}: ${midSentence(mainName)} was ${cost} than where it was just about right (${intervalText(from, to, decimals)}), from ${countText(found.n, 'answer')} of ${countText(found.tasters, 'taster')}.`
}

/** The whole of one just-about-right response in running text. */
export function justAboutRightText(
  found: JustAboutRight,
  ownName: string,
  mainName: string,
): string {
  const drops = found.drops.map((drop) => dropText(drop, mainName))
  return [`${ownName}: ${sharesText(found)}.`, ...drops].join(' ')
}

function percent(share: number): string {
  return decimalText(share * 100, 0)
}
