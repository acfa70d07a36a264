import { findings } from '@/core/findings/findings.ts'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { alsoSeen, lookedAt } from '@/core/wording/findings/also-seen.ts'
import { namingOf, shownRung } from '@/core/wording/findings/answer-of-rung.ts'
import { bakeNext } from '@/core/wording/findings/bake-next.ts'
import { besideSentence } from '@/core/wording/findings/beside-sentence.ts'
import { costSentence } from '@/core/wording/findings/cost-sentence.ts'
import { endingSentence } from '@/core/wording/findings/ending-sentence.ts'
import { expectationSentence } from '@/core/wording/findings/expectation-sentence.ts'
import { hangsSentence } from '@/core/wording/findings/hangs-sentence.ts'
import { headline, spokenOf } from '@/core/wording/findings/headline.ts'
import { nextStepText } from '@/core/wording/findings/next-step-text.ts'
import { openParts } from '@/core/wording/findings/open-parts.ts'
import { pairsSentence } from '@/core/wording/findings/pairs-sentence.ts'
import { placeSentence } from '@/core/wording/findings/place-sentence.ts'
import { rungLines } from '@/core/wording/findings/rung-text.ts'

/** The sentences of a findings page that claim something, each under what it answers. */
export interface EvidencePage {
  headline: string
  expectation: string
  place: string
  ending: string
  next: string[]
  ladder: string[]
  hangs: string
  bakeNext: string
  open: string[]
  pairs: string
  costs: string
  freshness: string
  alsoSeen: string[]
}

/** The page of a table of scores as a baker reads it, from its conclusion. */
export function evidencePage(scores: ScoreTable): EvidencePage {
  const document = findings(scores, { seed: 1, resamples: null })
  const [main, ...others] = document.responses
  if (!main) throw new Error('a table has a response')
  const naming = namingOf(document, scores.responses[0])
  const spoken = spokenOf(main, naming)
  const said = headline(main, naming)
  const rung = shownRung(main)
  const answer = rung === null ? null : main[rung]
  const best = answer !== null && isPresent(answer) && isPresent(answer.best) ? answer.best : null
  return {
    headline: `${said.shown} ${said.known}`.trim(),
    expectation: expectationSentence(spoken, scores),
    place: scores.factor.ordered ? placeSentence(spoken, best) : '',
    ending: endingSentence(spoken, scores),
    next: nextSteps(document, { toMend: 0 }).map((step) => {
      const { title, text } = nextStepText(step, spoken)
      return `${title}. ${text}`
    }),
    ladder: rungLines(main, naming).map(({ title, says }) => `${title}: ${says}`),
    hangs: hangsSentence(main.conclusion, (taster) => taster),
    bakeNext: bakeNext(spoken, scores).text,
    open: openParts(spoken).map(({ title, text }) => `${title}. ${text}`),
    pairs: pairsSentence(main.conclusion, naming),
    costs: costSentence(main.conclusion, naming, scores),
    freshness: besideSentence(main.conclusion.freshness, 'freshness'),
    alsoSeen: [
      lookedAt(others.length),
      ...others.map((found, at) => alsoSeen(found, namingOf(document, scores.responses[at + 1]))),
    ].filter(Boolean),
  }
}
