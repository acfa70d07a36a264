import { tableFindings } from '@/core/findings/at-table/table-findings.ts'
import { ballotChanges } from '@/core/tasting/ballot-changes.ts'
import { tasterQuestions } from '@/core/tasting/taster-questions.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { tableSentences } from '@/core/wording/findings/table-sentences.ts'
import { changeHead, saidText } from '@/core/wording/tasting/ballot-changes-text.ts'
import type { ReportBlock, ReportSection } from './report-block.ts'

/**
 * What the table says of itself (repeating, the first position, whether blinding held, who was left out), and every ballot that
 * was changed, voided or came late, with what it first said. Nothing where there is nothing to say.
 */
export function tableSection(
  whole: WholeTrial,
  nameOf: (tasterId: string) => string,
): ReportSection[] {
  const found = tableFindings(whole, { unsealed: true })
  const items = found.ok ? tableSentences(found, nameOf) : []
  const changes = ballotChanges(whole)
  const questions = tasterQuestions(planInForce(whole))
  const blocks: ReportBlock[] = [
    ...(items.length > 0 ? [{ kind: 'list' as const, items }] : []),
    ...(changes.length > 0
      ? [
          {
            kind: 'table' as const,
            caption:
              'Ballots that were changed, voided or late; late and voided ones count for nothing',
            head: ['Ballot', 'First sealed', 'Stands as'],
            rows: changes.map((change) => [
              changeHead(change, nameOf),
              change.original === null ? '–' : saidText(change.original, questions),
              saidText(change.now, questions),
            ]),
            figures: [false, false, false],
          },
        ]
      : []),
  ]
  return blocks.length === 0
    ? []
    : [{ id: 'table', title: 'What the table says of itself', blocks }]
}
