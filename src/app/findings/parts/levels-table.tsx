import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { TableBlock } from '@/core/report/report-block.ts'
import { levelsTable, meansTable } from '@/core/report/result-tables.ts'
import { shownRung } from '@/core/wording/findings/answer-of-rung.ts'
import { unbroken } from '@/core/wording/words/bound-units.ts'

/** What happened at each level and the means that are compared, as tables: the chart for those who read figures. */
export function LevelsTable({ answer, index }: { answer: FindingsAnswer; index: number }) {
  const found = answer.findings.responses[index]
  if (!found) return null
  const rung = shownRung(found)
  const shown = rung === null ? null : found[rung]
  return (
    <>
      <BlockTable block={levelsTable(found, answer.scores)} />
      {shown !== null && isPresent(shown) ? (
        <BlockTable block={meansTable(shown, answer.scores)} />
      ) : null}
    </>
  )
}

/** A table of the report's model on the screen. */
export function BlockTable({ block, close = false }: { block: TableBlock; close?: boolean }) {
  const [first, ...others] = block.head
  return (
    <LedgerTable
      caption={block.caption}
      close={close}
      rowHead={first}
      columns={others.map((head, index) => ({
        key: head,
        head,
        align: block.figures[index + 1] ? 'figure' : 'text',
      }))}
      rows={block.rows.map(([head = '', ...cells], index) => ({
        key: `${index} ${head}`,
        head: close ? unbroken(head) : head,
        cells,
        ...(block.rowLevels?.[index] ? { levelIds: block.rowLevels[index] } : {}),
      }))}
    />
  )
}
