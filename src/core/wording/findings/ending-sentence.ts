import type { Conclusion, Lacks } from '@/core/findings/evidence/conclusion-shape.ts'
import { type Absent, isPresent } from '@/core/findings/reason.ts'
import type { LevelEase, ScoreTable } from '@/core/findings/table/score-table.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { failedTimes } from '@/core/wording/bench/failure-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'
import { differenceDecimals } from './difference-text.ts'
import { levelInWords } from './named-in-findings.ts'
import { reasonText } from './reason-text.ts'
import type { Spoken } from './shown-sentence.ts'

/**
 * Which level is good enough and why, as the end of a sentence: "70 %, named before the mix, is as good as the best within your margin of
 * 1"; after "Adopt 70 %" with *it* for the level.
 */
export function goodEnoughWords({ conclusion, naming }: Spoken, after = false): string {
  const { ending, asGood } = conclusion
  if (ending.level === null) return ''
  const level = after ? 'it' : levelInWords(ending.level, naming)
  if (ending.why === 'best-shown') return `${level} is the best of the levels tried`
  if (!isPresent(asGood)) return ''
  const within = `within your margin of ${plainNumber(asGood.margin)}`
  if (ending.why === 'all-within') {
    if (after) return `all levels are ${within}, and it is the easiest`
    return ending.kind === 'adopt'
      ? `all levels are ${within}: take the easiest, ${level}`
      : `all levels are ${within}, ${level} the easiest of them`
  }
  const best = levelInWords(asGood.best, naming)
  if (ending.why === 'named') {
    const named = after ? 'it was named before the mix and' : `${level}, named before the mix,`
    return ending.level === asGood.best
      ? `${named} stands ${highest(conclusion)} and is as good as any other ${within}`
      : `${named} is as good as the best, ${best}, ${within}`
  }
  if (ending.level !== asGood.best)
    return `${level} is the easiest that is as good as the best, ${best}, ${within}`
  const passing = asGood.levels.filter(({ passes }) => passes).length
  return passing === 1
    ? `${level} stands ${highest(conclusion)}, and no other level is shown to be as good`
    : `${level} stands ${highest(conclusion)} and is the easiest of those as good ${within}`
}

/** The ending in full: adopt, hold back, or why no level is good enough yet, with what is lacking. */
export function endingSentence(spoken: Spoken, scores: Pick<ScoreTable, 'ease'>): string {
  const { conclusion, naming } = spoken
  const { ending, rung } = conclusion
  const good = goodEnoughWords(spoken)
  if (good !== '' && ending.level !== null) {
    const level = levelInWords(ending.level, naming)
    if (ending.kind === 'adopt')
      return `Adopt ${level}: ${goodEnoughWords(spoken, true)}${spared(spoken, scores)}.`
    const these = rung === 'doughs' ? 'these doughs' : 'these pieces'
    return rung === 'factor'
      ? `So far ${good}; make it again before you adopt it.`
      : `A hint of ${these} alone: ${good}. Bake again before you adopt it.`
  }
  return [notGoodEnough(spoken), ending.kind === 'stay' ? stayWords(spoken) : lackingWords(spoken)]
    .filter(Boolean)
    .join(' ')
}

function notGoodEnough({ conclusion }: Spoken): string {
  const { asGood } = conclusion
  if (!isPresent(asGood)) return noneAsGoodWords(asGood, conclusion)
  const named = asGood.named === null ? 'No level is' : 'The level named before the mix is not'
  return `${named} shown to be as good as the best within your margin of ${plainNumber(asGood.margin)}.`
}

/** Where the best stands: lowest of a response that is better lower. */
function highest({ better }: Pick<Conclusion, 'better'>): string {
  return better === 'lower' ? 'lowest' : 'highest'
}

/** Why no level is compared with a best; a target has been said, so nobody forgot to say which way is better. */
export function noneAsGoodWords(absent: Absent, { better }: Pick<Conclusion, 'better'>): string {
  return better === 'target' && absent.reason === 'no-direction'
    ? 'It has a target, so no level is compared with a best.'
    : reasonText(absent)
}

/** "Stay with your usual, 66 %: …" with what is lacking. */
export function stayWords(spoken: Spoken): string {
  const { conclusion, naming } = spoken
  const { usual, rung } = conclusion
  if (rung !== 'factor') return 'Bake again.'
  const stay =
    usual === null
      ? 'Change nothing for now.'
      : `Stay with your usual, ${levelInWords(usual, naming)}.`
  return [stay, lackingWords(spoken)].filter(Boolean).join(' ')
}

/** What is lacking to say that a level is as good as the best. */
function lackingWords({ conclusion }: Spoken): string {
  const { lacks } = conclusion
  return lacks ? `${asSentenceStart(lacksWords(lacks))}.` : ''
}

function lacksWords(lacks: Lacks): string {
  switch (lacks.what) {
    case 'a-second-session':
      return 'of the factor itself one session cannot speak'
    case 'sessions':
    case 'repeats':
      return `${lacks.what === 'sessions' ? countText(lacks.enough, 'session') : `${lacks.enough} of each level`} in all would show a level to be as good in 8 of 10 such trials`
    case 'margin':
      return `within so fine a margin hardly any number of sessions would show a level to be as good; six would do for a margin of ${decimalText(lacks.least, differenceDecimals(lacks.least))}`
  }
}

/** What the level spares, against the best. */
function spared({ conclusion }: Spoken, { ease }: Pick<ScoreTable, 'ease'>): string {
  const { ending, asGood } = conclusion
  const own = ease?.find(({ level }) => level === ending.level)
  const best = isPresent(asGood) ? ease?.find(({ level }) => level === asGood.best) : undefined
  const parts = own ? [failedTimes(own.failures)] : []
  const seconds = sparedSeconds(own, best)
  if (seconds !== null) parts.push(`took ${durationText(seconds)} less of your hands`)
  return parts.length > 0 ? `; it ${listText(parts)}` : ''
}

function sparedSeconds(own: LevelEase | undefined, best: LevelEase | undefined): number | null {
  if (own?.handsSeconds == null || best?.handsSeconds == null) return null
  const seconds = best.handsSeconds - own.handsSeconds
  return seconds >= 30 ? seconds : null
}
