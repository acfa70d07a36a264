import type { Plan } from '@/core/trial/plan-record.ts'
import {
  expectationText,
  responseText,
  splitText,
  writtenFirstTexts,
} from '@/core/wording/plan/plan-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import type { ReportSection } from './report-block.ts'

/** What was asked, and what was expected before the first mix. */
export function questionSection(plan: Plan): ReportSection {
  const { factor, levels, responses } = plan
  const main = responses.find((response) => response.id === plan.mainResponseId)
  const control = levels.find((level) => level.control)
  const unit = factor.unitOfMeasure
  const written = writtenFirstTexts(plan)
  return {
    id: 'question',
    title: 'Question',
    blocks: [
      {
        kind: 'facts',
        rows: [
          { term: 'Asked', text: plan.question },
          { term: 'Factor', text: unit === '' ? factor.name : `${factor.name}, ${unit}` },
          { term: 'Splits', text: splitText(factor.splitsAt) },
          { term: 'Levels', text: listText(levels.map((level) => levelText(level, unit))) },
          { term: 'Control', text: control ? levelText(control, unit) : 'none' },
          {
            term: 'Main response',
            text: main ? `${main.name}: ${responseText(main)}` : 'none was chosen',
          },
          {
            term: 'Expected',
            text: expectationText(plan.expectation, main?.name ?? 'The response', unit),
          },
          ...(written.length === 0
            ? []
            : [{ term: 'Written first', text: `${written.join('; ')}.` }]),
        ],
      },
      ...(responses.length > 1
        ? [
            {
              kind: 'list' as const,
              items: responses
                .filter((response) => response !== main)
                .map((response) => `${response.name}: ${responseText(response)}`),
            },
          ]
        : []),
    ],
  }
}
