import { memo } from 'react'
import styles from './ledger-table.module.css'
import type { LedgerColumn, LedgerRow } from './ledger-table.tsx'

interface Props {
  columns: readonly LedgerColumn[]
  row: LedgerRow
}

/** One line of a ledger; a line that says what it said before is not made again. */
export const LedgerLine = memo(function LedgerLine({ columns, row }: Props) {
  return (
    <tr className={row.quiet ? styles.quiet : ''}>
      <th scope="row" className={styles.text}>
        {row.head}
      </th>
      {columns.map((column, index) => (
        <td key={column.key} className={column.align === 'text' ? styles.text : styles.figure}>
          {row.cells[index]}
        </td>
      ))}
    </tr>
  )
}, saysTheSame)

function saysTheSame(before: Props, now: Props): boolean {
  return (
    before.row.head === now.row.head &&
    before.row.quiet === now.row.quiet &&
    sameList(before.row.cells, now.row.cells, Object.is) &&
    sameList(before.columns, now.columns, (a, b) => a.key === b.key && a.align === b.align)
  )
}

function sameList<Thing>(
  before: readonly Thing[],
  now: readonly Thing[],
  same: (a: Thing, b: Thing) => boolean,
): boolean {
  return (
    before === now ||
    (before.length === now.length &&
      before.every((thing, index) => same(thing, now[index] as Thing)))
  )
}
