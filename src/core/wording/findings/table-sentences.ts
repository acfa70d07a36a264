import type { TableFindings as Told } from '@/core/findings/at-table/table-findings.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { lostSessionText, oneHasShown } from '@/core/wording/tasting/alone-text.ts'
import { asSentenceStart, countText, countWord, listText } from '@/core/wording/words/list-text.ts'

/**
 * What the table says of itself, a sentence each: how tasters repeat, the first position, whether blinding held, who was left
 * out. Nobody is dropped for what is said here. Empty where nothing was asked.
 */
export function tableSentences(found: Told, nameOf: (tasterId: string) => string): string[] {
  return [
    repeatSentence(found, nameOf),
    firstSentence(found),
    blindingSentence(found),
    knowingSentence(found, nameOf),
    ...found.lost.map(lostSessionText),
    found.aloneSessions === null ? '' : oneHasShown(found.aloneSessions),
  ].filter(Boolean)
}

/** From about 1.5 points within one taster, a single score says little: common practice, no source. */
const wideRepeat = 1.5

function repeatSentence({ repeats }: Told, nameOf: (tasterId: string) => string): string {
  if (repeats.length === 0) return ''
  const pairs = repeats.reduce((sum, one) => sum + one.pairs, 0)
  const mean = repeats.reduce((sum, one) => sum + one.meanApart * one.pairs, 0) / pairs
  const wide = repeats.filter(({ sd }) => sd >= wideRepeat).map(({ tasterId }) => nameOf(tasterId))
  const said = `The same piece under two codes was scored ${decimalText(mean, 1)} points apart on average (${countText(pairs, 'pair')} of ${countText(repeats.length, 'taster')}).`
  const who =
    wide.length === 0
      ? ''
      : ` ${listText(wide)} ${wide.length === 1 ? 'varies' : 'vary'} widely from one tasting of a piece to the next; their single scores say little, and stay in.`
  return said + who
}

function firstSentence({ first }: Told): string {
  if (!first) return ''
  const size = decimalText(Math.abs(first.difference), 1)
  if (first.p >= 0.05)
    return `What came first was not shown to be scored otherwise than the same later (${size} points, p ${decimalText(first.p, 2)}).`
  return `What came first was scored ${size} points ${first.difference > 0 ? 'higher' : 'lower'} than the same later (p ${decimalText(first.p, 3)}); the orders spread this over the levels.`
}

function blindingSentence({ blinding }: Told): string {
  if (!blinding) return ''
  const { of, alone, asked, guessed, found, chance, p } = blinding
  const what = of === 'usual' ? 'the usual one' : 'the one with most of what was changed'
  const who = alone ? countText(asked, 'evening') : countText(asked, 'taster')
  if (guessed === 0)
    return `Asked which was ${what}, none of ${who} had an idea: blinding held as far as they say.`
  const luck = decimalText(chance * guessed, 1)
  const counted = `${found === 0 ? 'None' : asSentenceStart(countWord(found))} of ${countText(guessed, 'guess', 'guesses')} found ${what}; luck alone finds about ${luck}.`
  return p < 0.05
    ? `${counted} Blinding did not hold: scores of ${of === 'usual' ? 'the usual one may be scores of its name' : 'that dough may be scores of what the hands knew'}.`
    : `${counted} No sign that blinding failed, which so few guesses cannot prove.`
}

function knowingSentence({ knowing }: Told, nameOf: (tasterId: string) => string): string {
  if (knowing.length === 0) return ''
  const names = listText(knowing.map(nameOf))
  return `${names} ${knowing.length === 1 ? 'knows' : 'know'} which is which: what they like is left out while another tastes blind.`
}
