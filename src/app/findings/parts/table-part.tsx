import type { FindingsSource } from '@/app/findings/findings-source.ts'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Fold } from '@/app/kit/page/fold.tsx'
import { tableFindings } from '@/core/findings/at-table/table-findings.ts'
import { ballotChanges } from '@/core/tasting/ballot-changes.ts'
import { tasterQuestions } from '@/core/tasting/taster-questions.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { tableSentences } from '@/core/wording/findings/table-sentences.ts'
import {
  changeHead,
  changesCountText,
  saidText,
} from '@/core/wording/tasting/ballot-changes-text.ts'

/** What the table says of itself: how tasters repeat, the first position, whether blinding held. */
export function TablePart({
  whole,
  nameOf,
}: {
  whole: WholeTrial
  nameOf: FindingsSource['nameOf']
}) {
  const found = tableFindings(whole, { unsealed: true })
  if (!found.ok) return null
  const sentences = tableSentences(found, nameOf)
  const changes = ballotChanges(whole)
  const questions = tasterQuestions(planInForce(whole))
  if (sentences.length === 0 && changes.length === 0) return null
  return (
    <Fold name="What the table says of itself" result={sentences[0] ?? changesCountText(changes)}>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {changes.length === 0 ? null : (
        <LedgerTable
          caption="Ballots that were changed, voided or late; voided and late ones count for nothing"
          rowHead="Ballot"
          columns={[
            { key: 'first', head: 'First sealed', align: 'text' },
            { key: 'now', head: 'Stands as', align: 'text' },
          ]}
          rows={changes.map((change) => ({
            key: change.id,
            head: changeHead(change, nameOf),
            cells: [
              change.original === null ? '–' : saidText(change.original, questions),
              saidText(change.now, questions),
            ],
          }))}
        />
      )}
      {found.repeats.length === 0 ? null : (
        <LedgerTable
          caption="How each taster repeats"
          rowHead="Taster"
          columns={[
            { key: 'pairs', head: 'Pairs' },
            { key: 'apart', head: 'Apart' },
            { key: 'sd', head: 'SD of one answer' },
          ]}
          rows={found.repeats.map(({ tasterId, pairs, meanApart, sd }) => ({
            key: tasterId,
            head: nameOf(tasterId),
            cells: [String(pairs), decimalText(meanApart, 1), decimalText(sd, 2)],
          }))}
        />
      )}
    </Fold>
  )
}
