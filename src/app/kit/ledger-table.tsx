import type { ReactNode } from 'react'
import { LedgerLine } from './ledger-line.tsx'
import styles from './ledger-table.module.css'
import { UnitText } from './unit-text.tsx'
import unseen from './unseen.module.css'

export interface LedgerColumn {
  key: string
  head: ReactNode
  unit?: string
  align?: 'figure' | 'text'
}

export interface LedgerRow {
  key: string
  head: ReactNode
  cells: ReactNode[]
  /** Set smaller and lighter: sums, achieved values, remarks. */
  quiet?: boolean
}

interface LedgerTableProps {
  caption: string
  hideCaption?: boolean
  /** What stands over the first column. */
  rowHead?: ReactNode
  columns: LedgerColumn[]
  rows: LedgerRow[]
  /** Set closer, for a table in a narrow place. */
  close?: boolean
}

/** So many columns of figures rarely fit: then the row heads keep their width and stay in sight. */
const manyColumns = 6

/** Figures under each other, right-aligned, units in the head, thin rules. Wide tables scroll inside their own box. */
export function LedgerTable(props: LedgerTableProps) {
  const { caption, hideCaption, rowHead, columns, rows, close } = props
  const look = [
    styles.ledger,
    close ? styles.close : '',
    columns.length >= manyColumns ? styles.wide : '',
  ]
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls, and tables of one name are no landmarks
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard
    <div role="group" className={styles.box} aria-label={caption} tabIndex={0}>
      <table className={look.filter(Boolean).join(' ')}>
        <caption className={hideCaption ? unseen.unseen : styles.caption}>{caption}</caption>
        <thead>
          <tr>
            <th scope="col" className={styles.text}>
              {rowHead ?? <span className={unseen.unseen}>What</span>}
            </th>
            {columns.map((column) => (
              <th
                key={column.key}
                scope="col"
                className={column.align === 'text' ? styles.text : styles.figure}
              >
                {column.head}
                {column.unit ? (
                  <>
                    {' '}
                    <UnitText>{column.unit}</UnitText>
                  </>
                ) : null}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <LedgerLine key={row.key} columns={columns} row={row} />
          ))}
        </tbody>
      </table>
    </div>
  )
}
