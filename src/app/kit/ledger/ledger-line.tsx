import { memo, type Ref } from 'react'
import type { LedgerColumn, LedgerRow } from './ledger-row.ts'
import styles from './ledger-table.module.css'

export interface LineProps {
  columns: readonly LedgerColumn[]
  row: LedgerRow
  /** The level lit on the rail. */
  lit?: string | null
  ref?: Ref<HTMLTableRowElement>
}

/** One line of a ledger; a line that says what it said before is not made again. */
export const LedgerLine = memo(function LedgerLine({ columns, row, lit, ref }: LineProps) {
  const look = [row.quiet ? styles.quiet : '', speaksOf(row, lit) ? styles.litRow : '']
  return (
    <tr ref={ref} className={look.filter(Boolean).join(' ')}>
      <th scope="row" className={styles.text}>
        {row.head}
      </th>
      {columns.map((column, index) => (
        <td
          key={column.key}
          className={`${column.align === 'text' ? styles.text : styles.figure} ${isLit(column.key, lit) ? styles.lit : ''}`}
        >
          {row.cells[index]}
        </td>
      ))}
    </tr>
  )
}, saysTheSame)

/** A column that goes by a level's id is lit with it. */
export function isLit(key: string, lit: string | null | undefined): boolean {
  return lit != null && key === lit
}

function speaksOf({ levelIds }: LedgerRow, lit: string | null | undefined): boolean {
  return lit != null && levelIds?.includes(lit) === true
}

/** Whether a line would be written the same again. */
export function saysTheSame(before: LineProps, now: LineProps): boolean {
  return (
    before.lit === now.lit &&
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
