import { isPresent } from '@/core/findings/reason.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Expectation } from '@/core/trial/expectation.ts'
import { plainNumber, withUnit } from '@/core/units/number-text.ts'
import { type Spoken, shownSentence } from './shown-sentence.ts'

const expected: Record<Expectation['direction'], string> = {
  rises: 'You expected it to rise with the levels',
  falls: 'You expected it to fall as the levels rise',
  'best-inside': 'You expected the best to lie in between',
  'no-difference': 'You expected no difference',
}

/** What the baker expected, whether it holds, and the guess against where the best may lie: one voice with the headline. */
export function expectationSentence(
  spoken: Spoken,
  { expectation }: Pick<ScoreTable, 'expectation' | 'factor'>,
): string {
  const { conclusion, naming } = spoken
  if (conclusion.expectation === 'none' || !expectation)
    return 'No expectation was written down before the first mix, so none can be held against the data.'
  const guess = expectation.bestGuess
  const guessed = guess === null ? '' : withUnit(plainNumber(guess), naming.factor.unitOfMeasure)
  const choice = !naming.factor.ordered && expectation.direction !== 'no-difference'
  const against = guess === null ? '' : guessAgainstPlace(spoken, guess, guessed)
  const guessFirst = guess === null || against !== '' ? '' : `, with ${guessed} as your guess`
  const first = choice
    ? 'You expected the options to differ'
    : `${expected[expectation.direction]}${guessFirst}`
  return `${first}; ${outcomeWords(spoken, against)}.`
}

function outcomeWords(spoken: Spoken, against: string): string {
  const { conclusion } = spoken
  const again = 'Unexpected: ask it again'
  switch (conclusion.expectation) {
    case 'held': {
      const surprise = conclusion.shown.find(({ unexpected }) => unexpected)
      const held = `that was borne out${against}`
      return surprise ? `${held}. ${shownSentence(surprise, spoken)} too. ${again}` : held
    }
    case 'opposite':
      return `instead it is the other way round. ${again}`
    case 'inside-instead':
    case 'line-instead':
    case 'differs-instead':
      return `instead ${insteadWords(spoken)}${against}. ${again}`
    case 'too-small':
      return 'that was not shown, and whatever there is lies within your margin'
    default:
      return 'whether that holds is not settled'
  }
}

function insteadWords({ conclusion }: Spoken): string {
  if (conclusion.expectation === 'differs-instead') return 'there is one'
  const line = conclusion.shown.find((one) => one.is === 'line')
  if (conclusion.expectation === 'line-instead' && line) return `it ${line.goes} along the levels`
  const bend = conclusion.shown.find((one) => one.is === 'bend')
  const good =
    conclusion.better === 'higher' ? 'high' : conclusion.better === 'lower' ? 'low' : null
  if (good === null) return `it is ${bend?.middle === 'low' ? 'lowest' : 'highest'} in between`
  return `it looks ${bend?.middle === good ? 'best' : 'worst'} in between`
}

/** The guess against the stretch of a best that is shown to lie in between, as the end of a sentence; empty where none is. */
function guessAgainstPlace({ conclusion }: Spoken, guess: number, guessed: string): string {
  const { place, shown, better } = conclusion
  const good = better === 'lower' ? 'low' : 'high'
  const inside = shown.some((one) => one.is === 'bend' && one.inside && one.middle === good)
  if (!inside || !isPresent(place)) return ''
  if (guess < place.low) return `, though above your guess of ${guessed}`
  return guess > place.high
    ? `, though below your guess of ${guessed}`
    : `, and your guess of ${guessed} is among the places where it may lie`
}
