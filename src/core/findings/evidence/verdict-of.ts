import { isPresent } from '@/core/findings/reason.ts'
import type { RungName } from '@/core/findings/rungs/decisive-rung.ts'
import { levelValues } from '@/core/findings/rungs/trend-of.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Caution, Conclusion, Ending } from './conclusion-shape.ts'
import { endingOf } from './ending-of.ts'
import type { Allowance, Asked, Shown } from './evidence-shape.ts'
import { asGoodOf, type Judgeable, type JudgedBy, placeOf, tooSmallOf } from './judged-levels.ts'
import { primaryQuestion, type QuestionInput } from './primary-question.ts'

/** What a verdict is asked with, the same for all data and for what is left of it. */
export interface VerdictAsked extends Omit<JudgedBy, 'found' | 'allowance'> {
  rung: RungName
  asked: Asked
  allowance: Allowance
}

/** What compared levels show of a question, with what they are judged to be; `p` of the first step, whether shown or not. */
export interface Verdict extends Pick<Conclusion, 'shown' | 'tooSmall' | 'asGood' | 'place'> {
  question: QuestionInput | null
  p: number
}

/** The rules of evidence upon compared levels: the primary question (of the factor alone), too small, as good, and where the best lies. */
export function verdictOf(scores: ScoreTable, found: Judgeable, by: VerdictAsked): Verdict {
  const { rung, asked, response } = by
  const judged = { ...by, found }
  const good = response.better.is === 'lower' ? 'low' : 'high'
  const tooSmall = tooSmallOf(judged)
  const question = rung === 'factor' ? questionOf(scores, found, by, good) : null
  const { shown: said, p } = question ? primaryQuestion(question) : { shown: [], p: 1 }
  // Expecting no difference holds where all is within the margin, whatever else is shown.
  const within = isPresent(tooSmall) && tooSmall.allPairs
  const shown =
    asked.question === 'no-difference' && within
      ? said.map((one) => ({ ...one, unexpected: false }))
      : said
  const inside = shown.some((one) => one.is === 'bend' && one.inside && one.middle === good)
  const [asGood, place] = [asGoodOf(judged), placeOf(judged, inside)]
  return { shown, tooSmall, asGood, place, question, p }
}

function questionOf(
  scores: ScoreTable,
  { fit, pairs, present }: Judgeable,
  { response: { margin }, asked, allowance }: VerdictAsked,
  good: 'high' | 'low',
): QuestionInput {
  return {
    fit,
    levelIds: present.levels.map(({ id }) => id),
    values: scores.factor.ordered ? levelValues(present) : null,
    pairs,
    usual: present.control,
    margin,
    good,
    asked,
    allowance,
  }
}

/** A verdict in two words to compare by: what is shown and which way, not how large; and how it ends. */
export function wordsOfVerdict(
  scores: ScoreTable,
  verdict: Verdict,
  { rung, allowance }: VerdictAsked,
  caution: Caution | null,
): { shown: string; ending: string } {
  const ending = endingOf(scores, { ...verdict, rung, allowance, caution })
  return { shown: verdict.shown.map(wordOfShown).join(', '), ending: wordOfEnding(ending) }
}

function wordOfShown(one: Shown): string {
  if (one.is === 'line') return one.goes
  if (one.is === 'bend') return one.inside ? `${one.middle} inside` : one.middle
  return one.pairs.map(({ a, b, difference }) => `${a}${difference > 0 ? '<' : '>'}${b}`).join(' ')
}

const wordOfEnding = ({ kind, level }: Ending) => (level === null ? kind : `${kind} ${level}`)
