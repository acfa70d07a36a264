import type { Conclusion } from '@/core/findings/judged/conclusion.ts'
import { alsoSeen } from '@/core/wording/findings/also-seen.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { nextStepText } from '@/core/wording/findings/conclusion-text.ts'
import { easiestSentence } from '@/core/wording/findings/easiest-sentence.ts'
import { expectationSentence } from '@/core/wording/findings/expectation-sentence.ts'
import { restsOn } from '@/core/wording/findings/rests-on.ts'
import { verdictSentence } from '@/core/wording/findings/verdict-sentence.ts'
import type { ReportSection } from './report-block.ts'
import type { FoundScores } from './results-section.ts'

/** The verdict in words, what it rests on, what was expected, and what to do next. */
export function answerSection(
  { scores, findings }: FoundScores,
  conclusion: Conclusion,
): ReportSection {
  const [main, ...others] = findings.responses
  const naming = (index: number) => namingOf(findings, scores.responses[index])
  if (!main)
    return {
      id: 'answer',
      title: 'Answer',
      blocks: [{ kind: 'text', text: 'No response was planned, so there is no answer.' }],
    }
  const sentence = verdictSentence(main, naming(0))
  if (scores.rows.length === 0)
    return { id: 'answer', title: 'Answer', blocks: [{ kind: 'answer', ...sentence }] }
  return {
    id: 'answer',
    title: 'Answer',
    blocks: [
      { kind: 'answer', ...sentence },
      { kind: 'heading', text: 'The easiest that is as good' },
      { kind: 'text', text: easiestSentence(main.easiest, scores) },
      { kind: 'heading', text: 'What it rests on' },
      { kind: 'list', items: restsOn(scores, main, 0) },
      { kind: 'heading', text: 'What was expected, and what next' },
      { kind: 'text', text: expectationSentence(conclusion, scores, findings) },
      {
        kind: 'list',
        items: conclusion.next.map((step) => {
          const { title, text } = nextStepText(step)
          return `${title}. ${text}`
        }),
      },
      ...(others.length === 0
        ? []
        : [
            { kind: 'heading' as const, text: 'Also seen' },
            {
              kind: 'list' as const,
              items: others.map((found, index) => alsoSeen(found, naming(index + 1))),
            },
          ]),
    ],
  }
}
