import { addedRate } from '@/core/findings/evidence/added-rate.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { differenceDecimals } from './difference-text.ts'
import { leanSentence, wouldShowWords } from './open-question-text.ts'
import type { Spoken } from './shown-sentence.ts'

/** One thing to know where nothing is settled, under its own heading. */
export interface OpenPart {
  title: string
  text: string
}

/**
 * What is to be known where nothing of the factor is shown: what would have been, what two sessions more would do to the claim, what
 * would do more. Empty where something is shown, or one session alone cannot speak.
 */
export function openParts(spoken: Spoken): OpenPart[] {
  const { conclusion, naming } = spoken
  const { rung, shown, ending } = conclusion
  if (rung !== 'factor' || shown.length > 0 || ending.level !== null) return []
  return [
    {
      title: 'What would have shown',
      text: [`${asSentenceStart(wouldShowWords(conclusion, naming))}.`, leanSentence(spoken)]
        .filter(Boolean)
        .join(' '),
    },
    { title: 'What two more would do', text: moreSessions(spoken) },
    { title: 'What would do more', text: whatDoesMore(spoken) },
  ]
}

function moreSessions({ conclusion }: Spoken): string {
  const { allowance, sessions } = conclusion
  const look = allowance?.look
  if (look && look.done < look.most)
    return `${asSentenceStart(countText(look.most - look.done, 'session'))} still to come as written cost nothing: looking before the end was reckoned with.`
  const most = allowance?.added?.most ?? look?.most ?? sessions
  const rate = decimalText(addedRate(most, sessions + 2) * 100, 0)
  return `You have looked: added to the ${countText(most, 'session')} written first, with a reading after each, chance passes for a result in about ${rate} of 100 such trials, not 5.`
}

function whatDoesMore({ conclusion, naming }: Spoken): string {
  const { lacks } = conclusion
  const apart = naming.factor.ordered
  if (lacks?.what === 'margin') {
    const margin = decimalText(lacks.least, differenceDecimals(lacks.least))
    return `A margin of ${margin}, for which six sessions would do${apart ? '; or levels further apart' : ''}.`
  }
  const enough =
    lacks?.what === 'sessions'
      ? `${asSentenceStart(countText(lacks.enough, 'session'))} in all would show a level to be as good in 8 of 10 such trials.`
      : ''
  const further = apart ? 'Levels further apart ask for fewer sessions.' : ''
  return [enough, further].filter(Boolean).join(' ') || 'More sessions, planned before they begin.'
}
