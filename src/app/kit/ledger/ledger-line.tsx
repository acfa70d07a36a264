import { memo, type Ref } from 'react'
import type { LedgerColumn, LedgerRow } from './ledger-row.ts'
import styles from './ledger-table.module.css'

export interface LineProps {
  columns: readonly LedgerColumn[]
  row: LedgerRow
  ref?: Ref<HTMLTableRowElement>
}

/** One line of a ledger; a line that says what it said before is not made again. */
export const LedgerLine = memo(function LedgerLine({ columns, row, ref }: LineProps) {
  return (
    <tr ref={ref} className={row.quiet ? styles.quiet : ''}>
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

/** Whether a line would be written the same again. */
export function saysTheSame(before: LineProps, now: LineProps): boolean {
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
