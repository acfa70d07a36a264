import type { NextStep } from '@/core/findings/judged/next-steps.ts'
import { alsoSeen, lookedAt } from '@/core/wording/findings/also-seen.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { endingSentence } from '@/core/wording/findings/ending-sentence.ts'
import { expectationSentence } from '@/core/wording/findings/expectation-sentence.ts'
import { hangsSentence } from '@/core/wording/findings/hangs-sentence.ts'
import { headline, spokenOf } from '@/core/wording/findings/headline.ts'
import { nextStepText } from '@/core/wording/findings/next-step-text.ts'
import { restsOn } from '@/core/wording/findings/rests-on.ts'
import type { FoundScores } from './found-scores.ts'
import type { ReportSection } from './report-block.ts'

/** The answer in words, how it ends, what it rests and hangs on, what was expected, and what to do next. */
export function answerSection(
  { scores, findings, nameOf }: FoundScores,
  next: readonly NextStep[],
): ReportSection {
  const [main, ...others] = findings.responses
  const naming = (index: number) => namingOf(findings, scores.responses[index])
  if (!main)
    return {
      id: 'answer',
      title: 'Answer',
      blocks: [{ kind: 'text', text: 'No response was planned, so there is no answer.' }],
    }
  const spoken = spokenOf(main, naming(0))
  const sentence = headline(main, naming(0))
  if (scores.rows.length === 0)
    return { id: 'answer', title: 'Answer', blocks: [{ kind: 'answer', ...sentence }] }
  const hangs = hangsSentence(main.conclusion, nameOf)
  return {
    id: 'answer',
    title: 'Answer',
    blocks: [
      { kind: 'answer', ...sentence },
      { kind: 'heading', text: 'The easiest that is as good' },
      { kind: 'text', text: endingSentence(spoken, scores) },
      { kind: 'heading', text: 'What it rests on' },
      { kind: 'list', items: [...restsOn(scores, main, 0), ...(hangs === '' ? [] : [hangs])] },
      { kind: 'heading', text: 'What was expected, and what next' },
      { kind: 'text', text: expectationSentence(spoken, scores) },
      {
        kind: 'list',
        items: next.map((step) => {
          const { title, text } = nextStepText(step, spoken)
          return `${title}. ${text}`
        }),
      },
      ...(others.length === 0
        ? []
        : [
            { kind: 'heading' as const, text: 'Also seen' },
            { kind: 'text' as const, text: lookedAt(others.length) },
            {
              kind: 'list' as const,
              items: others.map((found, index) => alsoSeen(found, naming(index + 1))),
            },
          ]),
    ],
  }
}
