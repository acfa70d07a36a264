import { type ReactNode, useRef } from 'react'
import unseen from '@/app/kit/look/unseen.module.css'
import { useCurrentLevel } from '@/app/kit/rail/current-level.ts'
import { isLit, LedgerLine } from './ledger-line.tsx'
import type { LedgerColumn, LedgerRow } from './ledger-row.ts'
import styles from './ledger-table.module.css'
import { LiveLine } from './live-line.tsx'
import { UnitText } from './unit-text.tsx'
import { useColumnsOutOfSight } from './use-columns-out-of-sight.ts'
import { useSteadyColumns } from './use-steady-columns.ts'

interface LedgerTableProps {
  caption: string
  hideCaption?: boolean
  /** What stands over the first column. */
  rowHead?: ReactNode
  columns: LedgerColumn[]
  rows: LedgerRow[]
  /** Set closer, for a table in a narrow place. */
  close?: boolean
  /** Follows every key: columns keep their width meanwhile, and lines out of sight come a moment later than those seen. */
  live?: boolean
}

/** So many columns of figures rarely fit: then the row heads keep their width and stay in sight. Steady columns take more room. */
const manyColumns = 6
const manySteadyColumns = 3

/** Figures under each other, right-aligned, units in the head, thin rules. Wide tables scroll inside their own box. */
export function LedgerTable(props: LedgerTableProps) {
  const { caption, hideCaption, rowHead, columns, rows, close, live = false } = props
  const box = useRef<HTMLDivElement>(null)
  const outside = useColumnsOutOfSight(box, live, columns.map(({ key }) => key).join(' '))
  const lit = useCurrentLevel((state) => state.levelId)
  const steady = useSteadyColumns(live, columns, rows)
  const look = [
    styles.ledger,
    close ? styles.close : '',
    columns.length >= (live ? manySteadyColumns : manyColumns) ? styles.wide : '',
    steady ? styles.steady : '',
  ]
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls, and tables of one name are no landmarks
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard
    <div ref={box} role="group" className={styles.box} aria-label={caption} tabIndex={0}>
      <table
        className={look.filter(Boolean).join(' ')}
        style={steady ? { inlineSize: `max(100%, var(--row-head) + ${steady.size})` } : {}}
      >
        <caption className={hideCaption ? unseen.unseen : styles.caption}>{caption}</caption>
        {steady ? (
          <colgroup>
            <col />
            {steady.columnSizes.map((inlineSize, at) => (
              <col key={columns[at]?.key} style={{ inlineSize }} />
            ))}
          </colgroup>
        ) : null}
        <thead>
          <tr>
            <th scope="col" className={styles.text}>
              {rowHead ?? <span className={unseen.unseen}>What</span>}
            </th>
            {columns.map((column) => (
              <th
                key={column.key}
                scope="col"
                className={`${column.align === 'text' ? styles.text : styles.figure} ${isLit(column.key, lit) ? styles.lit : ''}`}
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
          {rows.map((row) =>
            live ? (
              <LiveLine key={row.key} columns={columns} row={row} lit={lit} outside={outside} />
            ) : (
              <LedgerLine key={row.key} columns={columns} row={row} lit={lit} />
            ),
          )}
        </tbody>
      </table>
    </div>
  )
}
