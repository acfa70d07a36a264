import type { Near } from '@/core/findings/evidence/conclusion-shape.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import type { Naming } from './answer-of-rung.ts'
import { cautionSentence } from './caution-sentence.ts'
import { differenceDecimals } from './difference-text.ts'
import { goodEnoughWords, stayWords } from './ending-sentence.ts'
import { levelInWords, levelOf } from './named-in-findings.ts'
import { oneEveningHeadline } from './one-evening-text.ts'
import { leanSentence, wouldShowWords } from './open-question-text.ts'
import { reasonText } from './reason-text.ts'
import { type Spoken, shownSentence } from './shown-sentence.ts'

/** The answer in two halves: what is shown, and how far it reaches with how it ends. */
export interface Headline {
  shown: string
  known: string
}

/** Both halves in one, as it stands in the home list and in a house formula. */
export function answerText({ shown, known }: Headline): string {
  return `${shown} ${known}`.trim()
}

/** What a conclusion is spoken of with: its response, the naming, and the levels that were tried. */
export function spokenOf(found: ResponseFindings, naming: Naming): Spoken {
  const levels = found.levels.map(({ level }) => levelOf(level, naming).name)
  return { name: found.name, conclusion: found.conclusion, naming, levels }
}

/** The sentence a Findings page opens with, from the conclusion and nothing else. A large p is never "no effect". */
export function headline(found: ResponseFindings, naming: Naming): Headline {
  const spoken = spokenOf(found, naming)
  const { conclusion } = found
  if (conclusion.oneEvening) return oneEveningHeadline(conclusion.oneEvening, spoken)
  if (conclusion.rung === null) return nothingYet(found)
  if (conclusion.rung !== 'factor') return ofThese(spoken)
  return conclusion.shown.length > 0 ? ofTheFactor(spoken) : notShown(spoken)
}

function nothingYet({ name, factor }: ResponseFindings): Headline {
  return {
    shown: `Nothing can be said of ${midSentence(name)} yet.`,
    known: 'reason' in factor ? reasonText(factor) : '',
  }
}

function ofTheFactor(spoken: Spoken): Headline {
  const { conclusion } = spoken
  const [first, second] = conclusion.shown
  if (!first) throw new Error('something is shown')
  return {
    shown: `${shownSentence(first, spoken)}.`,
    known: [
      first.unexpected ? 'Unexpected: ask it again.' : conclusion.caution ? '' : holds(spoken),
      second ? `${shownSentence(second, spoken)}; that was not expected: ask it again.` : '',
      cautionSentence(spoken),
      looksSentence(spoken),
    ]
      .filter(Boolean)
      .join(' '),
  }
}

/** "It holds for these tasters whenever the doughs are made again." */
function holds({ conclusion, naming }: Spoken): string {
  const made = naming.unit === 'batch' ? 'doughs' : 'pieces'
  const whom = conclusion.byTasters ? ' for these tasters' : ''
  return `It holds${whom} whenever the ${made} are made again.`
}

/** Nothing is shown of the factor: a level that is good enough all the same, or not settled with what would have shown. */
function notShown(spoken: Spoken): Headline {
  const { conclusion, name, naming } = spoken
  const { ending, near } = conclusion
  const what = midSentence(name)
  const looked = looksSentence(spoken)
  if (ending.kind === 'adopt' || ending.kind === 'hold') {
    const rest = goodEnoughWords(spoken)
    return {
      shown: `No difference in ${what} was shown${ending.why === 'all-within' ? `, and ${rest}` : ''}.`,
      known: [ending.why === 'all-within' ? '' : `${asSentenceStart(rest)}.`, looked]
        .filter(Boolean)
        .join(' '),
    }
  }
  const lean = leanSentence(spoken)
  const open = `${wouldShowWords(conclusion, naming)}.`
  const rest = [lean, stayWords(spoken), looked].filter(Boolean).join(' ')
  if (near?.differ)
    return {
      shown: nearSentence(spoken),
      known: `${oftenDiffer(near, naming)} Of ${midSentence(naming.factor.name)} itself nothing is settled: ${open} ${rest}`,
    }
  return { shown: `Not settled: ${open}`, known: rest }
}

/** One session: these pieces or doughs alone, and how often such ones differ for no reason of the factor. */
function ofThese(spoken: Spoken): Headline {
  const { conclusion, naming } = spoken
  const { near } = conclusion
  const factor = midSentence(naming.factor.name)
  if (!near)
    return {
      shown: 'Nothing is settled yet.',
      known: `Of ${factor} itself one session cannot speak. Bake again.`,
    }
  if (!near.differ)
    return {
      shown: `No difference shows between these ${near.rung}.`,
      known: `Of ${factor} itself one session cannot speak. Bake again.`,
    }
  return { shown: nearSentence(spoken), known: `${oftenDiffer(near, naming)} Bake again.` }
}

/** How often such pieces differ although the factor does nothing: in plain words, and once on a page. */
function oftenDiffer({ rung, chance }: Near, naming: Naming): string {
  const made = rung === 'doughs' ? 'Doughs' : 'Pieces'
  const factor = midSentence(naming.factor.name)
  return chance
    ? `${made} made like these are called different in about ${decimalText(chance.rate * 100, 0)} of 100 tastings even when ${factor} does nothing.`
    : `${made} often differ for no reason of ${factor}.`
}

function nearSentence({ conclusion, name, naming }: Spoken): string {
  const { near } = conclusion
  if (!near) return ''
  const by = decimalText(near.difference, differenceDecimals(near.difference))
  return `These ${near.rung} differ: ${midSentence(name)} is ${by} higher at ${levelInWords(near.highest, naming)} than at ${levelInWords(near.lowest, naming)}.`
}

/** What looking early, or more sessions than were written first, do to the claim; empty where neither was. */
function looksSentence({ conclusion }: Spoken): string {
  const { allowance } = conclusion
  if (!allowance) return ''
  const { look, added } = allowance
  if (added)
    return `${asSentenceStart(countText(added.done, 'session'))} were made where ${added.most} at most were written first: such trials call a difference without cause in about ${decimalText(added.rate * 100, 0)} of 100.`
  if (!look) return ''
  return look.done < look.most
    ? `After ${look.done} of ${look.most} sessions it has to be clearer than at the end.`
    : 'Findings were looked at early, so it had to be clearer than usual.'
}
