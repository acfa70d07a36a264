import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { endingSentence, goodEnoughWords } from './ending-sentence.ts'
import { levelInWords } from './named-in-findings.ts'
import { afterOneEvening } from './one-evening-text.ts'
import type { Spoken } from './shown-sentence.ts'

/** What to bake next, whatever the verdict: a heading, the levels it names, and why in a sentence. */
export interface BakeNext {
  title: string
  levels: string[]
  text: string
}

/** From the conclusion: the level that is good enough, else the usual until more is known, else all of them once more. */
export function bakeNext(spoken: Spoken, scores: Pick<ScoreTable, 'ease' | 'levels'>): BakeNext {
  const { conclusion, naming } = spoken
  const { ending, rung, usual, shown, oneEvening } = conclusion
  if (ending.level !== null)
    return {
      title: ending.why === 'best-shown' ? 'The best of those tried' : 'Easiest that is as good',
      levels: [ending.level],
      text: endingSentence(spoken, scores),
    }
  if (rung !== 'factor')
    return {
      title: 'Bake next',
      levels: scores.levels.map(({ id }) => id),
      text: oneEvening
        ? afterOneEvening(oneEvening, naming).text
        : 'All of them once more: one session speaks of its own pieces alone.',
    }
  const levels = usual === null ? [] : [usual]
  const name = usual === null ? null : levelInWords(usual, naming)
  if (shown.length === 0)
    return {
      title: 'On Saturday',
      levels,
      text: name
        ? `Bake your usual, ${name}: nothing that was shown speaks against it.`
        : 'Change nothing for now: nothing that was shown speaks for another level.',
    }
  return { title: 'On Saturday', levels, text: endingSentence(spoken, scores) }
}

/**
 * What to bake on Saturday and why, in one plain sentence that stands alone: "On Saturday bake 74 %: it stands highest, and no other
 * level is shown to be as good." It names the level that `bakeNext` names; where that asks for all of them, the usual meanwhile.
 */
export function bakeNowSentence(spoken: Spoken): string {
  const { conclusion, naming } = spoken
  const { ending, rung, usual, shown } = conclusion
  if (ending.level !== null) {
    const level = levelInWords(ending.level, naming)
    return ending.kind === 'adopt'
      ? `On Saturday bake ${level}: ${goodEnoughWords(spoken, true)}.`
      : `On Saturday bake ${level}: so far ${goodEnoughWords(spoken, true)}. It is a hint, to be made again before you adopt it.`
  }
  const stay = usual === null ? 'as you always do' : `your usual, ${levelInWords(usual, naming)}`
  if (rung !== 'factor')
    return `On Saturday bake ${stay}: one session speaks of its own pieces alone. Better still, bake all levels once more.`
  return shown.length === 0
    ? `On Saturday bake ${stay}: nothing that was shown speaks for another level.`
    : `On Saturday bake ${stay}: the levels differ, but none is known yet to be good enough to take its place.`
}

/**
 * The answer as it is sent to somebody: the question, the sentence of the findings, and what to bake next. A table has no
 * question: null leaves its line out.
 */
export function answerToCopy(
  question: string | null,
  answer: string,
  spoken: Spoken,
  scores: Pick<ScoreTable, 'ease' | 'levels'>,
): string {
  const { title, levels, text } = bakeNext(spoken, scores)
  const names = levels.map((levelId) => levelInWords(levelId, spoken.naming)).join(', ')
  return [question, answer, `${title}${names === '' ? '' : `: ${names}`}. ${text}`]
    .filter(Boolean)
    .join('\n')
}
