import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import type { Conclusion } from '@/core/findings/judged/conclusion.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { Best } from '@/core/findings/rungs/rung-shape.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Expectation } from '@/core/trial/expectation.ts'
import { plainNumber, withUnit } from '@/core/units/number-text.ts'
import { bestSentence } from './best-sentence.ts'
import { expectationOutcomeText } from './conclusion-text.ts'

const expected: Record<Expectation['direction'], string> = {
  rises: 'You expected it to rise with the levels',
  falls: 'You expected it to fall as the levels rise',
  'best-inside': 'You expected the best to lie inside the range',
  'no-difference': 'You expected no difference',
}

const outcomes: Record<Exclude<Conclusion['expectation'], 'none'>, string> = {
  held: 'That was borne out.',
  'not-held': 'That was not borne out.',
  'not-settled': 'Whether that holds is not settled.',
}

/**
 * What the baker expected of the main response, whether it was borne out, and where the best lies against the guess
 * that was written down before the first mix.
 */
export function expectationSentence(
  { expectation: outcome, rung }: Conclusion,
  scores: Pick<ScoreTable, 'expectation' | 'levels'>,
  { responses, factor, unit }: FindingsDocument,
): string {
  const { expectation } = scores
  if (outcome === 'none' || !expectation) return expectationOutcomeText('none')
  const levels = scores.levels.map(({ name }) => name)
  const guess = expectation.bestGuess
  const guessed = guess === null ? '' : withUnit(plainNumber(guess), factor.unitOfMeasure)
  const first = `${expected[expectation.direction]}${guess === null ? '' : `, with ${guessed} as the best guess`}.`
  const found = rung === null ? null : responses[0]?.[rung]
  const best = found && isPresent(found) && isPresent(found.best) ? found.best : null
  if (!best || best.answer === 'flat') return `${first} ${outcomes[outcome]}`
  const where = bestSentence(best, { factor, unit }, levels)
  const beside = guess === null ? '' : guessAgainst(best, guess, guessed)
  return [first, outcomes[outcome], where, beside].filter(Boolean).join(' ')
}

/** Whether the guess lies in the interval of the best; nothing where there is none. */
function guessAgainst({ answer, fieller, crossing }: Best, guess: number, guessed: string): string {
  if (crossing || answer !== 'inside' || !isPresent(fieller) || fieller.kind !== 'interval')
    return ''
  const { low, high } = fieller
  if (low === null || high === null) return ''
  const inside = guess >= low && guess <= high
  return `The guess, ${guessed}, lies ${inside ? 'within' : 'outside'} that.`
}
