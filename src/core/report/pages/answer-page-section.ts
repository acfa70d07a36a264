import type { NextStep } from '@/core/findings/judged/next-steps.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { FoundScores } from '@/core/report/found-scores.ts'
import type { ReportSection } from '@/core/report/report-block.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { bakeNowSentence } from '@/core/wording/findings/bake-next.ts'
import { expectationSentence } from '@/core/wording/findings/expectation-sentence.ts'
import { headline, spokenOf } from '@/core/wording/findings/headline.ts'
import { nextStepText } from '@/core/wording/findings/next-step-text.ts'
import { notSettledTexts } from '@/core/wording/findings/not-settled.ts'
import { rungLines } from '@/core/wording/findings/rung-text.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'

/** The answer in words, and what to bake on Saturday: what stands under the question on the first page. */
export function answerPageSection({ scores, findings }: FoundScores): ReportSection {
  const head = { id: 'page-answer', title: 'The answer' }
  const [main] = findings.responses
  if (!main)
    return {
      ...head,
      blocks: [{ kind: 'text', text: 'No response was planned, so there is no answer.' }],
    }
  const naming = namingOf(findings, scores.responses[0])
  const answer = { kind: 'answer' as const, ...headline(main, naming) }
  if (scores.rows.length === 0) return { ...head, blocks: [answer] }
  const spoken = spokenOf(main, naming)
  return {
    ...head,
    blocks: [
      answer,
      { kind: 'strong', text: bakeNowSentence(spoken) },
      { kind: 'text', text: expectationSentence(spoken, scores) },
    ],
  }
}

/** How far it carries by rung, what stays open, and the step after; nothing before the first score. */
export function reachSections(
  { scores, findings }: FoundScores,
  next: readonly NextStep[],
): ReportSection[] {
  const [main] = findings.responses
  if (!main || main.n === 0) return []
  const naming = namingOf(findings, scores.responses[0])
  const spoken = spokenOf(main, naming)
  const [step] = next
  const nextText = step ? nextStepText(step, spoken) : null
  return [
    {
      id: 'page-reach',
      title: 'How far this carries',
      blocks: [
        {
          kind: 'facts',
          rows: rungLines(main, naming).map(({ rung, title, claim, says }) => ({
            term: title,
            text: isPresent(main[rung]) ? `${asSentenceStart(says)}, ${claim}.` : says,
          })),
        },
      ],
    },
    {
      id: 'page-open',
      title: 'Not settled',
      blocks: [{ kind: 'list', items: notSettledTexts(spoken) }],
    },
    ...(nextText
      ? [
          {
            id: 'page-next',
            title: 'Next step',
            blocks: [{ kind: 'text' as const, text: `${nextText.title}. ${nextText.text}` }],
          },
        ]
      : []),
  ]
}
